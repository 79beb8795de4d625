package stackside.model;

/** How current passes through the patient. */
public enum EnergyKind implements Word {
  MONOPOLAR,
  BIPOLAR,
  ARGON;

  /** Whether the current leaves the patient through a neutral electrode. */
  public boolean needsNeutralElectrode() {
    return this != BIPOLAR;
  }
}
