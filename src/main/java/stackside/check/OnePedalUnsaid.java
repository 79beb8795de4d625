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
import stackside.model.Settings;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Finds words that say one pedal only is used, where {@code press-only} does not name it: the card
 * then prints a setting for the other pedal too. English only.
 */
final class OnePedalUnsaid implements Rule {
  private static final Fault FAULT =
      new Fault(
          "one-pedal-unsaid", Severity.ERROR, "the card prints a pedal that the words forbid");

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
    return profile.settings().stream()
        .filter(settings -> settings.assigned().size() > 1)
        .flatMap(
            settings ->
                Stream.of(profile.technique(), profile.caution())
                    .flatMap(Optional::stream)
                    .flatMap(prose -> problem(settings, prose)));
  }

  private static Stream<Problem> problem(Settings settings, Prose prose) {
    Optional<String> marked = settings.pressOnly().map(only -> only.value().word());
    return only(prose).filter(said -> !marked.equals(Optional.of(said))).stream()
        .map(
            said ->
                FAULT
                    .at(
                        prose.at(),
                        "the words say the %s pedal only, but 'press-only' %s"
                            .formatted(
                                said, marked.map(other -> "is " + other).orElse("is not written")))
                    .help("write 'press-only: " + said + "' in the settings, or change the words"));
  }

  private static Optional<String> only(Prose prose) {
    Matcher found = ONE.matcher(prose.plain());
    return found.find()
        ? Optional.of(found.group(1) == null ? found.group(2) : found.group(1))
            .map(word -> word.toLowerCase(Locale.ROOT))
        : Optional.empty();
  }
}
