package stackside.model;

import java.time.LocalDate;
import stackside.source.Location;

/** One generator with its asset number. */
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

  /** Hashes the id only; the full record is slow. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
