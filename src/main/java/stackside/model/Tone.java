package stackside.model;

/** What is heard while a pedal is pressed. */
public enum Tone implements Word {
  USUAL,
  ALARM,
  NONE,
  DIFFERENT
}
