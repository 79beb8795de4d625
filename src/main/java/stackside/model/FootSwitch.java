package stackside.model;

import java.util.List;
import stackside.source.Location;

/** A foot switch; pedals left to right as the person standing at it sees them. */
public record FootSwitch(Location at, ThingId id, Fact<String> name, @AtLeastOne List<Pedal> pedals)
    implements Thing {
  public FootSwitch {
    pedals = List.copyOf(pedals);
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
