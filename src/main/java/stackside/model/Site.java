package stackside.model;

import java.util.List;
import stackside.source.Location;

/** An anatomical site. */
public record Site(
    Location at,
    ThingId id,
    Fact<String> name,
    List<Fact<String>> also,
    Fact<Tract> tract,
    Fact<Wall> wall)
    implements SiteChoice {
  public Site {
    also = List.copyOf(also);
  }

  @Override
  public String title() {
    return name.value();
  }

  @Override
  public List<Site> sites() {
    return List.of(this);
  }

  /** Hashes the id only; the full record is slow. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
