package stackside.model;

import java.util.List;
import java.util.Optional;
import stackside.source.Location;

/**
 * What to do, step by step, when a sign is seen or after something went wrong.
 *
 * @param onCard whether it stands on the card of each of its machines; where no drill of a machine
 *     says so, the two of worst consequence do
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

  /** By the id alone; hashing all that hangs on a thing would cost more than any lookup. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
