package stackside.model;

import java.util.Optional;
import stackside.quantity.Watts;
import stackside.source.Location;

/** A mode with its level and power limit on one pedal. */
public record PedalSetting(
    Location at, Fact<Mode> mode, Optional<Fact<Level>> level, Optional<Fact<Watts>> limit)
    implements PedalUse {

  @Override
  public Optional<PedalSetting> setting() {
    return Optional.of(this);
  }
}
