package stackside.model;

import java.util.Optional;
import stackside.source.Location;

/**
 * A publication cited as evidence by the unit.
 *
 * @param by authors, or the body that published it
 * @param year absent where nobody has seen it
 * @param in journal, volume, page, clause or table
 */
public record Citation(
    Location at,
    ThingId id,
    Fact<String> by,
    @Key("title") Fact<String> work,
    Optional<Fact<Integer>> year,
    Optional<Fact<String>> in,
    Fact<CitationBasis> basis)
    implements Thing {

  @Override
  public String title() {
    return by.value() + year.map(seen -> " " + seen.value()).orElse("");
  }

  /** Hashes the id only; the full record is slow. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
