package stackside.model;

import java.util.List;
import java.util.Optional;
import stackside.source.Location;

/**
 * What to do, step by step, when a sign is seen or after something has gone wrong.
 *
 * @param onCard whether it is printed on the card of each of its machines; if no drill of a machine
 *     says so, the two with the worst consequences are printed
 */
public record Drill(
    Location at,
    ThingId id,
    @Key("title") Fact<String> name,
    Sign sign,
    @Key("for") AppliesTo appliesTo,
    Fact<String> makeSafe,
    @AtLeastOne List<DrillCheck> checks,
    Optional<Fact<String>> never,
    Fact<Boolean> escalate,
    Optional<Fact<Boolean>> onCard)
    implements Thing {
  public Drill {
    checks = List.copyOf(checks);
  }

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
