package stackside.model;

import java.util.List;
import java.util.Optional;
import stackside.source.Location;

/** Steps that are read out at one moment, for all machines or for some. */
public record Checklist(
    Location at,
    ThingId id,
    Optional<Fact<String>> name,
    Fact<ChecklistKind> kind,
    @Key("for") AppliesTo appliesTo,
    @AtLeastOne List<ChecklistStep> steps)
    implements Thing {
  public Checklist {
    steps = List.copyOf(steps);
  }

  @Override
  public String title() {
    return name.map(Fact::value).orElse(kind.value().spoken());
  }

  /** Hashes the id only; the full record is slow. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
