package stackside.model;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.quantity.LitresPerMinute;
import stackside.source.Location;

/** Everything that has to be set up and plugged in for an answer with current. */
public record Settings(
    Location at,
    Optional<StoredProgram> program,
    Fact<Instrument> instrument,
    Fact<Socket> socket,
    PedalUse yellow,
    PedalUse blue,
    Optional<Fact<Electrode>> neutralElectrode,
    Optional<Fact<LitresPerMinute>> argonFlow)
    implements Answer {

  /** What a pedal of this colour does. */
  public PedalUse pedal(PedalColour colour) {
    return switch (colour) {
      case YELLOW -> yellow;
      case BLUE -> blue;
    };
  }

  /** The settings of the pedals that are assigned, yellow first. */
  public List<PedalSetting> assigned() {
    return Stream.of(yellow, blue).flatMap(use -> use.setting().stream()).toList();
  }

  /**
   * Whether instrument, socket and modes are of one kind, with a neutral electrode where that kind
   * needs one. Where they do not, nothing more can be worked out from them.
   */
  public boolean belongTogether() {
    EnergyKind kind = instrument.value().kind().value();
    return socket.value().kind().value().energy().equals(Optional.of(kind))
        && assigned().stream().allMatch(it -> it.mode().value().kind().value() == kind)
        && (neutralElectrode.isPresent() || !kind.needsNeutralElectrode());
  }
}
