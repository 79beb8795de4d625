package stackside.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.derive.chain.Chains;
import stackside.model.Cable;
import stackside.model.Fact;
import stackside.model.Fitted;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.model.Settings;
import stackside.model.Socket;
import stackside.model.SocketKind;
import stackside.model.Thing;
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

  /** A way that a room's cables do not make, and a cable of the unit that would. */
  private record Missing(Room room, Fact<? extends Fitted> end, Socket socket, Cable cable) {}

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    Unit unit = analysis.unit();
    List<Problem> found = new ArrayList<>();
    for (Room room : unit.rooms()) {
      unit.profilesServing(room).stream()
          .flatMap(
              profile ->
                  profile.settings().stream().flatMap(it -> missing(unit, room, profile, it)))
          .collect(
              Collectors.groupingBy(it -> it.cable().id(), LinkedHashMap::new, Collectors.toList()))
          .values()
          .forEach(same -> found.add(problem(same)));
    }
    return found;
  }

  private static Stream<Missing> missing(Unit unit, Room room, Profile profile, Settings settings) {
    Stream<Missing> instrument =
        keeps(room.keeps().instruments(), settings.instrument().value())
            ? missing(unit, room, settings.instrument(), List.of(settings.socket().value()))
                .stream()
            : Stream.of();
    List<Socket> neutral =
        profile.machine().value().sockets().stream()
            .filter(socket -> socket.kind().value() == SocketKind.NEUTRAL)
            .toList();
    Stream<Missing> electrode =
        settings.neutralElectrode().stream()
            .filter(it -> keeps(room.keeps().neutralElectrodes(), it.value()))
            .flatMap(it -> missing(unit, room, it, neutral).stream());
    return Stream.concat(instrument, electrode);
  }

  private static <T extends Thing> boolean keeps(List<Fact<T>> kept, T thing) {
    return kept.stream().anyMatch(it -> it.value().id().equals(thing.id()));
  }

  private static Optional<Missing> missing(
      Unit unit, Room room, Fact<? extends Fitted> end, List<Socket> sockets) {
    if (sockets.stream().anyMatch(it -> Chains.in(room).shortest(end.value(), it).isPresent())) {
      return Optional.empty();
    }
    Chains all = new Chains(unit.cables());
    return sockets.stream()
        .flatMap(
            socket ->
                all.shortest(end.value(), socket).stream()
                    .flatMap(chain -> chain.cables().stream())
                    .filter(cable -> !keeps(room.keeps().cables(), cable))
                    .map(cable -> new Missing(room, end, socket, cable)))
        .findFirst();
  }

  private static Problem problem(List<Missing> same) {
    Missing first = same.get(0);
    Room room = first.room();
    Location at =
        room.keeps().cables().stream().findFirst().map(Fact::at).orElse(room.keeps().at());
    List<Fitted> ends = same.stream().<Fitted>map(it -> it.end().value()).distinct().toList();
    return FAULT
        .at(
            at,
            "%s keeps no cable that joins %s to socket %s"
                .formatted(
                    Wording.quoted(room),
                    Wording.quoted(ends),
                    Wording.quoted(same.stream().map(Missing::socket).toList())))
        .note(first.end().at(), "a profile of the room that needs it")
        .note(first.cable().at(), "such a cable is " + Wording.quoted(first.cable()))
        .help("add the cable or adaptor to what the room keeps");
  }
}
