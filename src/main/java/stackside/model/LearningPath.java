package stackside.model;

import java.util.List;
import stackside.source.Location;

/** What people in a role read, in order. */
public record LearningPath(
    Location at,
    ThingId id,
    Fact<String> name,
    @Key("for") Fact<String> reader,
    @AtLeastOne List<Fact<ThingId>> reads)
    implements Thing {
  public LearningPath {
    reads = List.copyOf(reads);
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
