package stackside.model;

import java.util.List;
import java.util.Optional;
import stackside.quantity.PeakVolts;
import stackside.source.Location;

/** An active instrument that plugs in. */
public record Instrument(
    Location at,
    ThingId id,
    Fact<String> name,
    List<Fact<String>> also,
    Fact<EnergyKind> kind,
    Fact<ConnectorId> connector,
    Fact<PeakVolts> ratedVoltage,
    Optional<Fact<Boolean>> singleUse)
    implements Fitted {
  public Instrument {
    also = List.copyOf(also);
  }

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
