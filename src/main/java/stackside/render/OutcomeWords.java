package stackside.render;

import java.util.Optional;
import stackside.derive.circuit.OutcomeClass;
import stackside.derive.circuit.Press;
import stackside.derive.circuit.Reach;
import stackside.model.Evidence;
import stackside.model.Tone;

/** What comes of a fault in the few words that a drawing or a table has room for. */
public final class OutcomeWords {

  private OutcomeWords() {}

  /** What is heard, then what reaches the instrument in hand: "usual tone, no current". */
  public static String brief(Press press) {
    String heard = heard(press.observed().tone(), press.evidence().map(Evidence::basis));
    return heard + ", " + what(press);
  }

  private static String what(Press press) {
    return switch (press.outcomeClass()) {
      case UNINTENDED_INSTRUMENT_LIVE -> "another instrument is live";
      case SILENT_CROWDED_RETURN -> "current through too little skin";
      case SILENT_OTHER_SETTING, SILENT_NO_CURRENT, NOTICEABLE, BLOCKED_WITH_ALARM, RIGHT ->
          reaches(press.reach());
    };
  }

  /** What is heard. */
  public static String heard(Tone tone, Optional<Evidence.Basis> basis) {
    if (basis.filter(Evidence.Basis.UNKNOWN::equals).isPresent()) {
      return "sound not known";
    }
    return switch (tone) {
      case USUAL -> "usual tone";
      case ALARM -> "alarm";
      case NONE -> "no tone";
      case DIFFERENT -> "different tone";
    };
  }

  /** What reaches the instrument in hand. */
  public static String reaches(Reach reach) {
    return switch (reach) {
      case AS_APPROVED -> "current as approved";
      case ANOTHER_SETTING -> "another setting";
      case UNKNOWN_SETTING -> "a setting that nobody has read";
      case LESS -> "less current";
      case NOTHING -> "no current";
    };
  }

  /** The class of an outcome in words. */
  public static String words(OutcomeClass outcome) {
    return switch (outcome) {
      case UNINTENDED_INSTRUMENT_LIVE -> "another instrument live";
      case SILENT_OTHER_SETTING -> "silent, another setting";
      case SILENT_CROWDED_RETURN -> "silent, current through too little skin";
      case SILENT_NO_CURRENT -> "silent, no current";
      case NOTICEABLE -> "noticeable without alarm";
      case BLOCKED_WITH_ALARM -> "blocked with alarm";
      case RIGHT -> "right";
    };
  }

  /** The shape beside these words. */
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
