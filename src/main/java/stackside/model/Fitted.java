package stackside.model;

/** What touches the patient and reaches a socket through any chain of cables and adaptors. */
public sealed interface Fitted extends Accessory permits Instrument, Electrode {
  /** Its own end. */
  Fact<ConnectorId> connector();
}
