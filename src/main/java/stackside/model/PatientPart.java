package stackside.model;

/**
 * Whatever touches the patient and connects to a socket, directly or through cables and adaptors.
 */
public sealed interface PatientPart extends Accessory permits Instrument, Electrode {
  /** The connector at its own end. */
  Fact<ConnectorId> connector();
}
