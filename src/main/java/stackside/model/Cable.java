package stackside.model;

import stackside.quantity.PeakVolts;
import stackside.source.Location;

/** A cable or adaptor: the plug at the machine's end, the connector at the patient's end. */
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

  /** By the id alone; hashing all that hangs on a thing would cost more than any lookup. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
