package stackside.model;

import java.util.Optional;
import stackside.quantity.Band;
import stackside.quantity.Kilograms;
import stackside.source.Location;

/** A group of patients by body weight. */
public record PatientGroup(
    Location at, ThingId id, Optional<Fact<String>> name, Fact<Band<Kilograms>> weight)
    implements Thing {

  @Override
  public String title() {
    return name.map(Fact::value).orElse(id.slug().replace('-', ' '));
  }

  /** Hashes the id only; the full record is slow. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
