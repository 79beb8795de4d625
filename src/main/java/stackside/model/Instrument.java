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
    implements PatientPart {
  public Instrument {
    also = List.copyOf(also);
  }

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
