package stackside.model;

import java.util.List;
import java.util.Optional;
import stackside.quantity.Band;
import stackside.quantity.Millimetres;
import stackside.source.Location;

/** A lesion or task, with its steps. */
public record Lesion(
    Location at,
    ThingId id,
    Fact<String> name,
    List<Fact<String>> also,
    Optional<Fact<LesionShape>> shape,
    Optional<Fact<LesionKind>> kind,
    Optional<Fact<Band<Millimetres>>> size,
    @AtLeastOne List<Fact<Step>> steps)
    implements Thing {
  public Lesion {
    also = List.copyOf(also);
    steps = List.copyOf(steps);
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
