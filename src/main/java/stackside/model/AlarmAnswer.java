package stackside.model;

/** What a unit wants done where an alarm is raised. */
public enum AlarmAnswer implements Word {
  /** The card comes out of use with the next issue, unsigned. */
  STOP,
  /** The card stays, and says so. */
  WARN
}
