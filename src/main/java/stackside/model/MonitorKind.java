package stackside.model;

/** How a machine watches its neutral electrode. */
public enum MonitorKind implements Word {
  CONTACT_QUALITY,
  CONTINUITY,
  NONE
}
