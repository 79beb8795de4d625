package stackside.model;

import stackside.source.Location;

/** Somebody who signs or can be asked, by function and never by name. */
public record Role(Location at, ThingId id, Fact<String> name) implements Thing {

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
