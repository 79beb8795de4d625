package stackside.check;

import java.util.ArrayList;
import java.util.List;
import stackside.derive.Analysis;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds two things of one kind with the same name, and one program name for two slots. */
final class NameTwice implements Rule {
  private static final Fault FAULT =
      new Fault("name-twice", Severity.ERROR, "two things of one kind have the same name");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    List<Problem> found = new ArrayList<>();
    for (List<Names.Name> names : Names.of(analysis.unit())) {
      for (int i = 1; i < names.size(); i++) {
        Names.Name name = names.get(i);
        names.subList(0, i).stream()
            .filter(earlier -> earlier.words().equals(name.words()))
            .filter(earlier -> !earlier.owner().equals(name.owner()))
            .findFirst()
            .ifPresent(earlier -> found.add(problem(name, earlier)));
      }
    }
    return found;
  }

  private static Problem problem(Names.Name name, Names.Name earlier) {
    return FAULT
        .at(
            name.at(),
            "the name '%s' is taken: %s has it too".formatted(name.words(), earlier.owner()))
        .note(earlier.at(), "where the other one stands")
        .help("give each the name that people read on it");
  }
}
