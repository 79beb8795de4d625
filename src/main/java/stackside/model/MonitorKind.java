package stackside.model;

/** How a machine monitors its neutral electrode. */
public enum MonitorKind implements Word {
  CONTACT_QUALITY,
  CONTINUITY,
  NONE
}
