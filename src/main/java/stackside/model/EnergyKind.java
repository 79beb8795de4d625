package stackside.model;

/** How current is led through the patient. */
public enum EnergyKind implements Word {
  MONOPOLAR,
  BIPOLAR,
  ARGON
}
