package stackside.model;

import stackside.quantity.PeakVolts;
import stackside.source.Location;

/** A cable or adaptor: a plug at the machine's end, a connector at the patient's end. */
public record Cable(
    Location at,
    ThingId id,
    Fact<String> name,
    Fact<ConnectorId> plug,
    Fact<ConnectorId> connector,
    Fact<PeakVolts> ratedVoltage)
    implements Accessory {

  @Override
  public String title() {
    return name.value();
  }

  /** Hashes the id only; the full record is slow. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
