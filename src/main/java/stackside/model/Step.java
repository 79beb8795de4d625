package stackside.model;

import stackside.source.Location;

/** A part of a task that has its own settings, such as resection or margin. */
public record Step(Location at, ThingId id, Fact<String> name) implements Thing {

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
