package stackside.check;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.model.Profile;
import stackside.model.Prose;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Finds techniques that use one pedal only, while the card prints a setting for both and says
 * nothing of it. English only.
 */
final class OnePedalUnsaid implements Rule {
  private static final Fault FAULT =
      new Fault("one-pedal-unsaid", Severity.ERROR, "the card does not say that one pedal is used");

  private static final Pattern ONE =
      Pattern.compile(
          "\\b(yellow|blue) pedal only\\b|\\bonly the (yellow|blue) pedal\\b",
          Pattern.CASE_INSENSITIVE);

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().profiles().stream().flatMap(OnePedalUnsaid::problem).toList();
  }

  private static Stream<Problem> problem(Profile profile) {
    boolean both = profile.settings().stream().anyMatch(each -> each.assigned().size() > 1);
    Optional<String> pedal = profile.technique().flatMap(OnePedalUnsaid::only);
    if (!both || pedal.isEmpty() || profile.caution().flatMap(OnePedalUnsaid::only).equals(pedal)) {
      return Stream.empty();
    }
    return Stream.of(
        FAULT
            .at(
                profile.technique().orElseThrow().at(),
                "the technique uses the %s pedal only, but the card prints both pedals and no technique"
                    .formatted(pedal.get()))
            .help("say which pedal under 'caution' too, which stands on the card"));
  }

  private static Optional<String> only(Prose prose) {
    Matcher found = ONE.matcher(prose.plain());
    return found.find()
        ? Optional.of(found.group(1) == null ? found.group(2) : found.group(1))
            .map(word -> word.toLowerCase(Locale.ROOT))
        : Optional.empty();
  }
}
