package stackside.model;

/** Whether a generator may be used. */
public enum AssetStatus implements Word {
  IN_USE,
  SPARE,
  ON_LOAN,
  /** In use, and moved from room to room within its hospital. */
  MOBILE,
  QUARANTINED
}
