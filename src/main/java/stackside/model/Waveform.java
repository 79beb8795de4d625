package stackside.model;

/** How the voltage of a mode runs over time. */
public enum Waveform implements Word {
  CONTINUOUS,
  MODULATED,
  PULSED
}
