package stackside.model;

import java.util.Optional;
import stackside.source.Location;

/** A pedal that does nothing. */
public record Unassigned(Location at) implements PedalUse {

  @Override
  public Optional<PedalSetting> setting() {
    return Optional.empty();
  }
}
