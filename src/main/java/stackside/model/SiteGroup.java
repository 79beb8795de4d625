package stackside.model;

import java.util.List;
import stackside.source.Location;

/** Several sites under one name. */
public record SiteGroup(Location at, ThingId id, Fact<String> name, @AtLeastOne List<Fact<Site>> of)
    implements SiteChoice {
  public SiteGroup {
    of = List.copyOf(of);
  }

  @Override
  public String title() {
    return name.value();
  }

  @Override
  public List<Site> sites() {
    return of.stream().map(Fact::value).toList();
  }

  /** Hashes the id only; the full record is slow. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
