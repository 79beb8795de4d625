package stackside.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
      Map<String, List<Names.Name>> alike = new HashMap<>();
      for (Names.Name name : names) {
        List<Names.Name> earlier =
            alike.computeIfAbsent(seen(name.words()), any -> new ArrayList<>());
        earlier.stream()
            .filter(each -> !each.words().equals(name.words()))
            .filter(each -> !each.owner().equals(name.owner()))
            .findFirst()
            .ifPresent(each -> found.add(problem(name, each)));
        earlier.add(name);
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
