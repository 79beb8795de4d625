package stackside.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stackside.derive.Analysis;
import stackside.derive.chain.Chains;
import stackside.model.Cable;
import stackside.model.Fact;
import stackside.model.Fitted;
import stackside.model.Machine;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.model.Settings;
import stackside.model.Socket;
import stackside.model.SocketKind;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Location;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds rooms that lack the cable between an instrument or electrode and its socket. */
final class CableNotKept implements Rule {
  private static final Fault FAULT =
      new Fault(
          "cable-not-kept",
          Severity.ERROR,
          "a room lacks the cable from an instrument or electrode to its socket");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    Unit unit = analysis.unit();
    List<Problem> found = new ArrayList<>();
    for (Room room : unit.rooms()) {
      Set<List<ThingId>> told = new LinkedHashSet<>();
      for (Profile profile : unit.profilesServing(room)) {
        profile.settings().ifPresent(it -> check(unit, room, profile, it, told, found));
      }
    }
    return found;
  }

  private static void check(
      Unit unit,
      Room room,
      Profile profile,
      Settings settings,
      Set<List<ThingId>> told,
      List<Problem> found) {
    if (keeps(room.keeps().instruments(), settings.instrument().value())) {
      Socket socket = settings.socket().value();
      missing(unit, room, settings.instrument().value(), List.of(socket))
          .filter(cable -> told.add(List.of(settings.instrument().value().id(), socket.id())))
          .ifPresent(
              cable ->
                  found.add(
                      problem(
                          room, settings.instrument(), "socket " + Wording.quoted(socket), cable)));
    }
    settings
        .neutralElectrode()
        .filter(electrode -> keeps(room.keeps().neutralElectrodes(), electrode.value()))
        .ifPresent(
            electrode -> {
              Machine machine = profile.machine().value();
              missing(unit, room, electrode.value(), neutralSockets(machine))
                  .filter(cable -> told.add(List.of(electrode.value().id(), machine.id())))
                  .ifPresent(
                      cable -> found.add(problem(room, electrode, Wording.quoted(machine), cable)));
            });
  }

  private static <T extends Thing> boolean keeps(List<Fact<T>> kept, T thing) {
    return kept.stream().anyMatch(it -> it.value().id().equals(thing.id()));
  }

  private static List<Socket> neutralSockets(Machine machine) {
    return machine.sockets().stream()
        .filter(socket -> socket.kind().value() == SocketKind.NEUTRAL)
        .toList();
  }

  /** A cable of the unit that would join the two, where those of the room do not. */
  private static Optional<Cable> missing(Unit unit, Room room, Fitted end, List<Socket> sockets) {
    if (sockets.stream().anyMatch(it -> Chains.in(room).shortest(end, it).isPresent())) {
      return Optional.empty();
    }
    return sockets.stream()
        .flatMap(socket -> new Chains(unit.cables()).shortest(end, socket).stream())
        .flatMap(chain -> chain.cables().stream())
        .filter(cable -> !keeps(room.keeps().cables(), cable))
        .findFirst();
  }

  private static Problem problem(
      Room room, Fact<? extends Fitted> end, String target, Cable cable) {
    Location at =
        room.keeps().cables().stream().findFirst().map(Fact::at).orElse(room.keeps().at());
    return FAULT
        .at(
            at,
            "%s keeps no cable that joins %s to %s"
                .formatted(Wording.quoted(room), Wording.quoted(end.value()), target))
        .note(end.at(), "a profile of the room that needs it")
        .note(cable.at(), "such a cable is " + Wording.quoted(cable))
        .help("add the cable or adaptor to what the room keeps");
  }
}
