package stackside.model;

/** What happened to a generator. */
public enum ServiceEventKind implements Word {
  SERVICE,
  SOFTWARE_UPDATE,
  SWAP,
  LOAN
}
