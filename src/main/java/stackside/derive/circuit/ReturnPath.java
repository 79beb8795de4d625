package stackside.derive.circuit;

import stackside.model.Word;

/** How current comes back to the machine. */
public enum ReturnPath implements Word {
  NEUTRAL_ELECTRODE,
  PART_OF_NEUTRAL_ELECTRODE,
  BETWEEN_POLES,
  /** Only by accident: whatever earthed or conducting thing touches the patient. */
  STRAY,
  /** No current leaves the machine. */
  NONE
}
