package stackside.model;

import stackside.source.Location;

/** A part of a task with its own settings, such as resection or margin. */
public record Step(Location at, ThingId id, Fact<String> name) implements Thing {

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
