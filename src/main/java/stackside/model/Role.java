package stackside.model;

import stackside.source.Location;

/** Somebody who signs or is asked, by function and never by name. */
public record Role(Location at, ThingId id, Fact<String> name) implements Thing {

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
