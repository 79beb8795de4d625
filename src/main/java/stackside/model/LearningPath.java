package stackside.model;

import java.util.List;
import stackside.source.Location;

/** What somebody in a role reads, in order. */
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

  /** By the id alone; hashing all that hangs on a thing would cost more than any lookup. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
