package stackside.model;

import java.util.Optional;
import stackside.quantity.Watts;
import stackside.source.Location;

/** The mode, level and power limit set on one pedal. */
public record PedalSetting(
    Location at, Fact<Mode> mode, Optional<Fact<Level>> level, Optional<Fact<Watts>> limit)
    implements PedalUse {

  @Override
  public Optional<PedalSetting> setting() {
    return Optional.of(this);
  }

  /** Whether the machine's controls allow this setting. */
  public boolean canBeSet() {
    Mode of = mode.value();
    boolean levelFits =
        of.level()
            .map(scale -> level.map(it -> scale.levels().contains(it.value())).orElse(false))
            .orElse(level.isEmpty());
    boolean limitFits =
        of.powerLimit()
            .map(range -> limit.map(it -> range.value().canBeSet(it.value())).orElse(false))
            .orElse(limit.isEmpty());
    return levelFits && limitFits;
  }
}
