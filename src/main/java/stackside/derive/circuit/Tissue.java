package stackside.derive.circuit;

import stackside.model.Word;

/** What is seen at the tip of the instrument in hand. */
public enum Tissue implements Word {
  NO_EFFECT,
  WEAK_EFFECT,
  OTHER_EFFECT,
  USUAL_EFFECT;

  static Tissue of(Reach reach) {
    return switch (reach) {
      case AS_APPROVED -> USUAL_EFFECT;
      case ANOTHER_SETTING, UNKNOWN_SETTING -> OTHER_EFFECT;
      case LESS -> WEAK_EFFECT;
      case NOTHING -> NO_EFFECT;
    };
  }
}
