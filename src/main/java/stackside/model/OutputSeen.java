package stackside.model;

/** What comes out while a pedal is pressed. */
public enum OutputSeen implements Word {
  USUAL,
  WEAK,
  NONE
}
