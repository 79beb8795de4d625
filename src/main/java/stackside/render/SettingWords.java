package stackside.render;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.model.Level;
import stackside.model.Mode;
import stackside.quantity.Watts;

/** A level and a power limit in words, as the display of the machine has them. */
public final class SettingWords {
  private SettingWords() {}

  /** {@code Notch 2}: what the display calls the level, then the level. */
  public static String level(Mode mode, Level level) {
    return mode.level().map(scale -> scale.name().value() + Numbers.BOUND).orElse("")
        + level.text();
  }

  /** {@code Notch 2, 60 W}, on one line each; empty where nothing is set beside the mode. */
  public static String of(Mode mode, Optional<Level> level, Optional<Watts> limit) {
    return Stream.of(
            level.map(each -> level(mode, each).replace(' ', Numbers.BOUND)),
            limit.map(Numbers::text))
        .flatMap(Optional::stream)
        .collect(Collectors.joining(", "));
  }
}
