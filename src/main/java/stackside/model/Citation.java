package stackside.model;

import java.util.Optional;
import stackside.source.Location;

/**
 * A publication that the unit's evidence names.
 *
 * @param by authors or body
 * @param in journal, volume, page, clause or table
 */
public record Citation(
    Location at,
    ThingId id,
    Fact<String> by,
    @Key("title") Fact<String> work,
    Fact<Integer> year,
    Optional<Fact<String>> in,
    Fact<CitationBasis> basis)
    implements Thing {

  @Override
  public String title() {
    return by.value() + " " + year.value();
  }

  /** By the id alone; hashing all that hangs on a thing would cost more than any lookup. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
