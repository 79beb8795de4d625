package stackside.model;

import stackside.source.Location;

/**
 * A page of the handbook.
 *
 * @param name its first heading
 * @param text without that heading
 */
public record HandbookPage(Location at, ThingId id, Fact<String> name, Prose text)
    implements Thing {

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
