package stackside.model;

/** How the voltage of a mode varies over time. */
public enum Waveform implements Word {
  CONTINUOUS,
  MODULATED,
  PULSED
}
