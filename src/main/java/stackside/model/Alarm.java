package stackside.model;

/** What records and days can show of a card that hangs, without anybody having decided anything. */
public enum Alarm implements Word {
  /** A program was read back, and it is not what is approved. */
  PROGRAM_DIFFERS,
  /** A measured output lies outside its tolerance. */
  OUTPUT_OUT_OF_TOLERANCE,
  /** An output was not measured again in time. */
  CHECK_OVERDUE,
  /** Something on the card was not looked at again in time. */
  REVIEW_OVERDUE
}
