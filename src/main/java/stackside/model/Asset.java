package stackside.model;

import java.time.LocalDate;
import stackside.source.Location;

/** One generator with its number. */
public record Asset(
    Location at,
    @Key("asset") ThingId id,
    Fact<Machine> machine,
    Fact<String> software,
    Fact<AssetStatus> status,
    Fact<LocalDate> since)
    implements Thing {

  @Override
  public String title() {
    return id.slug();
  }

  /** By the id alone; hashing all that hangs on a thing would cost more than any lookup. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
