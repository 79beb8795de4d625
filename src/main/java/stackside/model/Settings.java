package stackside.model;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.quantity.LitresPerMinute;
import stackside.source.Location;

/**
 * Everything that must be set and plugged in for an answer with current.
 *
 * @param pressOnly the only pedal that the technique uses; absent if every assigned pedal may be
 *     pressed
 */
public record Settings(
    Location at,
    Optional<StoredProgram> program,
    Fact<Instrument> instrument,
    Fact<Socket> socket,
    PedalUse yellow,
    PedalUse blue,
    Optional<Fact<PedalColour>> pressOnly,
    Optional<Fact<Electrode>> neutralElectrode,
    Optional<Fact<LitresPerMinute>> argonFlow)
    implements Answer {

  public Settings {
    Optional<PedalColour> idle =
        pressOnly.map(Fact::value).filter(only -> pedal(only, yellow, blue).setting().isEmpty());
    if (idle.isPresent()) {
      throw new UnreadableText(
          "'press-only' names the " + idle.get().word() + " pedal, which is unassigned",
          "name the pedal that has the setting of this technique, or leave 'press-only' out");
    }
  }

  /** What a pedal of this colour does. */
  public PedalUse pedal(PedalColour colour) {
    return pedal(colour, yellow, blue);
  }

  private static PedalUse pedal(PedalColour colour, PedalUse yellow, PedalUse blue) {
    return switch (colour) {
      case YELLOW -> yellow;
      case BLUE -> blue;
    };
  }

  /**
   * Whether the technique uses a pedal: it is assigned, and the technique is not restricted to
   * another.
   */
  public boolean presses(PedalColour colour) {
    return pedal(colour).setting().isPresent()
        && pressOnly.map(only -> only.value() == colour).orElse(true);
  }

  /** Whether a pedal has a setting that this technique must not use. */
  public boolean forbids(PedalColour colour) {
    return pedal(colour).setting().isPresent() && !presses(colour);
  }

  /** The settings of the assigned pedals, yellow first. */
  public List<PedalSetting> assigned() {
    return Stream.of(yellow, blue).flatMap(use -> use.setting().stream()).toList();
  }

  /**
   * Whether the instrument, socket and modes are of one kind, with a neutral electrode where that
   * kind needs one. If not, nothing more can be derived from the settings.
   */
  public boolean belongTogether() {
    EnergyKind kind = instrument.value().kind().value();
    return socket.value().kind().value().energy().equals(Optional.of(kind))
        && assigned().stream().allMatch(it -> it.mode().value().kind().value() == kind)
        && (neutralElectrode.isPresent() || !kind.needsNeutralElectrode());
  }
}
