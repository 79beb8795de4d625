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

  /** By the id alone; hashing all that hangs on a thing would cost more than any lookup. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
