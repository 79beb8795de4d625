package stackside.render;

import java.util.Optional;
import stackside.derive.circuit.OutcomeClass;
import stackside.derive.circuit.Press;
import stackside.derive.circuit.Reach;
import stackside.model.Evidence;
import stackside.model.Tone;

/** Describes what a fault leads to, in few enough words for a drawing or a table. */
public final class OutcomeWords {

  private OutcomeWords() {}

  /** What people hear, then what reaches the instrument in hand: "usual tone, no current". */
  public static String brief(Press press, Words words) {
    String heard = heard(press.observed().tone(), press.evidence().map(Evidence::basis), words);
    return words.say("outcome.brief", heard, what(press, words));
  }

  private static String what(Press press, Words words) {
    return switch (press.outcomeClass()) {
      case UNINTENDED_INSTRUMENT_LIVE -> words.say("outcome.other-live");
      case SILENT_CROWDED_RETURN -> words.say("outcome.crowded");
      case SILENT_OTHER_SETTING, SILENT_NO_CURRENT, NOTICEABLE, BLOCKED_WITH_ALARM, RIGHT ->
          reaches(press.reach(), words);
    };
  }

  /** What people hear. */
  public static String heard(Tone tone, Optional<Evidence.Basis> basis, Words words) {
    return basis.filter(Evidence.Basis.UNKNOWN::equals).isPresent()
        ? words.say("heard.unknown")
        : words.say("heard." + tone.word());
  }

  /** What reaches the instrument in hand. */
  public static String reaches(Reach reach, Words words) {
    return words.choice(reach);
  }

  /** The class of an outcome in words. */
  public static String words(OutcomeClass outcome, Words words) {
    return words.choice(outcome);
  }

  /** The shape shown beside these words. */
  public static Mark mark(OutcomeClass outcome) {
    return switch (outcome) {
      case UNINTENDED_INSTRUMENT_LIVE -> Mark.FULL_DIAMOND;
      case SILENT_OTHER_SETTING, SILENT_CROWDED_RETURN, SILENT_NO_CURRENT -> Mark.DIAMOND;
      case NOTICEABLE -> Mark.RING;
      case BLOCKED_WITH_ALARM -> Mark.BARRED_SQUARE;
      case RIGHT -> Mark.DISC;
    };
  }
}
