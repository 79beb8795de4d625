package stackside.derive.circuit;

import java.util.Optional;
import stackside.model.PedalColour;
import stackside.model.Socket;

/**
 * What the machine is set to: the active program, or settings made by hand.
 *
 * @param slot absent if set by hand or unknown
 * @param shownAs the name that the display shows
 * @param socket the socket that the program is for
 */
public record Program(
    Optional<Integer> slot,
    Optional<String> shownAs,
    Optional<Socket> socket,
    PedalMeaning yellow,
    PedalMeaning blue,
    Source source) {

  /** How we know what the program contains. */
  public enum Source {
    /** The approved profile that is being followed. */
    APPROVED,
    /** The last reading of this slot on this asset. */
    READ,
    /** An approved profile for this slot on this model; the slot has no reading that counts. */
    OTHER_PROFILE,
    /** Neither read nor approved. */
    UNKNOWN
  }

  /** A program that nobody has read or approved. */
  public static Program unknown(Optional<Integer> slot) {
    return new Program(
        slot,
        Optional.empty(),
        Optional.empty(),
        new PedalMeaning.Unknown(),
        new PedalMeaning.Unknown(),
        Source.UNKNOWN);
  }

  /** What a pedal of this colour does. */
  public PedalMeaning pedal(PedalColour colour) {
    return switch (colour) {
      case YELLOW -> yellow;
      case BLUE -> blue;
    };
  }
}
