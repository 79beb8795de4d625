package stackside.derive.circuit;

import stackside.model.Word;

/** How the current returns to the machine. */
public enum ReturnPath implements Word {
  NEUTRAL_ELECTRODE,
  PART_OF_NEUTRAL_ELECTRODE,
  BETWEEN_POLES,
  /** Only by accident, through any earthed or conducting object that touches the patient. */
  STRAY,
  /** No current leaves the machine. */
  NONE
}
