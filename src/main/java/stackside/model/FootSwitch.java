package stackside.model;

import java.util.List;
import stackside.source.Location;

/**
 * A foot switch; its pedals are listed from left to right, as seen by the person standing at it.
 */
public record FootSwitch(Location at, ThingId id, Fact<String> name, @AtLeastOne List<Pedal> pedals)
    implements Thing {
  public FootSwitch {
    pedals = List.copyOf(pedals);
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
