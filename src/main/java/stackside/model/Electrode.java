package stackside.model;

import java.util.Optional;
import stackside.quantity.AmpereSquaredSeconds;
import stackside.quantity.Band;
import stackside.quantity.Kilograms;
import stackside.source.Location;

/** A neutral electrode with its own cable. */
public record Electrode(
    Location at,
    ThingId id,
    Fact<String> name,
    Fact<ElectrodeArea> area,
    Fact<ConnectorId> plug,
    Fact<Band<Kilograms>> patients,
    Optional<Fact<AmpereSquaredSeconds>> heatingFactor)
    implements PatientPart {

  @Override
  public String title() {
    return name.value();
  }

  @Override
  public Fact<ConnectorId> connector() {
    return plug;
  }

  /** Hashes the id only; the full record is slow. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
