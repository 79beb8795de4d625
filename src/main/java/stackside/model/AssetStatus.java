package stackside.model;

/** Whether a generator may be used. */
public enum AssetStatus implements Word {
  IN_USE,
  SPARE,
  ON_LOAN,
  QUARANTINED
}
