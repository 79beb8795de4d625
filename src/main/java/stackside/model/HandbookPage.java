package stackside.model;

import stackside.source.Location;

/**
 * A page of the handbook.
 *
 * @param name its first heading
 * @param text everything below that heading
 */
public record HandbookPage(Location at, ThingId id, Fact<String> name, Prose text)
    implements Thing {

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
