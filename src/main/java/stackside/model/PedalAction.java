package stackside.model;

/** What a pedal does. */
public enum PedalAction implements Word {
  CUT,
  COAGULATION
}
