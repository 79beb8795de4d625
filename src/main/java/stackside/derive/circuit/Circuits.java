package stackside.derive.circuit;

import java.util.List;
import stackside.model.Asset;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.model.SingleFault;

/**
 * Every single fault put through every approved answer with current, in every room and on every
 * generator that it serves.
 *
 * @param outcomes by room, asset, profile, fault
 * @param signs the same, summed up for each room and asset, worst first
 * @param unbuilt answers whose instrument reaches its socket by nothing that the room keeps
 */
public record Circuits(List<Outcome> outcomes, List<FailureSign> signs, List<Unbuilt> unbuilt) {

  public Circuits {
    outcomes = List.copyOf(outcomes);
    signs = List.copyOf(signs);
    unbuilt = List.copyOf(unbuilt);
  }

  /** An answer that cannot be set up in a room. */
  public record Unbuilt(Room room, Asset asset, Profile profile) {}

  /** The failure signs of one generator in one room, worst first. */
  public List<FailureSign> signsIn(Room room, Asset asset) {
    return signs.stream()
        .filter(sign -> sign.room().id().equals(room.id()))
        .filter(sign -> sign.asset().id().equals(asset.id()))
        .toList();
  }

  /** What becomes of a profile in a room, in the order of the faults. */
  public List<Outcome> outcomesOf(Profile profile, Room room) {
    return outcomes.stream()
        .filter(outcome -> outcome.profile().id().equals(profile.id()))
        .filter(outcome -> outcome.room().id().equals(room.id()))
        .toList();
  }

  /** The outcomes of putting the instrument of a profile into a wrong socket. */
  public List<Outcome> wrongSockets(Profile profile, Room room) {
    return outcomesOf(profile, room).stream()
        .filter(outcome -> outcome.fault() == SingleFault.INSTRUMENT_IN_WRONG_SOCKET)
        .toList();
  }
}
