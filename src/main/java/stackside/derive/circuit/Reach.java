package stackside.derive.circuit;

import stackside.model.Word;

/** What reaches the instrument in hand. */
public enum Reach implements Word {
  AS_APPROVED,
  ANOTHER_SETTING,
  UNKNOWN_SETTING,
  LESS,
  NOTHING
}
