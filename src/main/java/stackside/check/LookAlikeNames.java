package stackside.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stackside.derive.Analysis;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Asks about names that differ only in what the eye takes for the same. */
final class LookAlikeNames implements Rule {
  private static final Fault FAULT =
      new Fault(
          "look-alike-names", Severity.WARNING, "two names differ only in what looks the same");

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
            .filter(earlier -> !earlier.words().equals(name.words()))
            .filter(earlier -> !earlier.owner().equals(name.owner()))
            .filter(earlier -> seen(earlier.words()).equals(seen(name.words())))
            .findFirst()
            .ifPresent(earlier -> found.add(problem(name, earlier)));
      }
    }
    return found;
  }

  /** Capitals, blanks, hyphens, and letters that pass for digits are not told apart at a glance. */
  private static String seen(String words) {
    return words
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^\\p{L}\\p{N}]", "")
        .replace('o', '0')
        .replace('l', '1')
        .replace('i', '1')
        .replace('s', '5')
        .replace('z', '2')
        .replace('b', '8');
  }

  private static Problem problem(Names.Name name, Names.Name earlier) {
    return FAULT
        .at(
            name.at(),
            "'%s' is easily taken for '%s', the name of %s"
                .formatted(name.words(), earlier.words(), earlier.owner()))
        .note(earlier.at(), "where the other one stands")
        .help("let the names differ in a whole word");
  }
}
