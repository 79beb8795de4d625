package stackside.check;

import static stackside.check.Rule.error;
import static stackside.check.Rule.warning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.chain.Chains;
import stackside.model.Accessory;
import stackside.model.Cable;
import stackside.model.Drill;
import stackside.model.Fact;
import stackside.model.Instrument;
import stackside.model.PatientPart;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.model.Settings;
import stackside.model.Socket;
import stackside.model.SocketKind;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.source.Location;

/** What rooms keep for their profiles and drills. */
final class KeptRules {

  /** A connection that the room's cables cannot make, and a cable of the unit that could. */
  private record MissingCable(
      Room room, Fact<? extends PatientPart> end, Socket socket, Cable cable) {}

  /**
   * Something that has to be kept in a room because a profile or a drill needs it there.
   *
   * @param named where the profile or drill names it
   * @param by what needs it, in words
   */
  private record Need<T extends Thing>(Room room, Fact<T> named, String by) {
    boolean metBy(Function<Room, List<Fact<T>>> kept) {
      return kept.apply(room).stream().anyMatch(it -> it.value().id().equals(named.value().id()));
    }

    Finding keptNowhere(List<Room> rooms) {
      return Finding.at(
              named.at(),
              "%s is needed by %s, but %s do not keep it"
                  .formatted(Wording.quoted(named.value()), by, Wording.quoted(rooms)))
          .help("name something that the rooms keep, or add this to what they keep");
    }

    Finding notKept(Function<Room, List<Fact<T>>> kept) {
      Location at = kept.apply(room).stream().findFirst().map(Fact::at).orElse(room.keeps().at());
      return Finding.at(
              at,
              "%s does not keep %s, which %s needs"
                  .formatted(Wording.quoted(room), Wording.quoted(named.value()), by))
          .note(named.at(), "where it is needed")
          .help("add it to what the room keeps, or change what needs it");
    }
  }

  private KeptRules() {}

  static List<Rule<CheckedUnit>> rules() {
    return List.of(
        error(
            "instrument-not-kept",
            "a room does not keep an instrument that it needs",
            KeptRules::instrumentNotKept),
        error(
            "electrode-not-kept",
            "a room does not keep a neutral electrode that it needs",
            KeptRules::electrodeNotKept),
        error(
            "cable-not-kept",
            "a room lacks the cable from an instrument or electrode to its socket",
            KeptRules::cableNotKept),
        warning(
            "kept-instrument-unreached",
            "a room keeps an instrument that none of its cables joins to a socket",
            KeptRules::keptInstrumentUnreached),
        warning(
            "cable-into-socket-of-other-kind",
            "a room's cables let an instrument into a socket of another kind",
            KeptRules::cableIntoSocketOfOtherKind),
        error("spare-not-kept", "a room lacks a spare that a drill needs", KeptRules::spareNotKept),
        error(
            "spares-place-missing",
            "a room keeps spares but does not say where",
            KeptRules::sparesPlaceMissing));
  }

  private static List<Finding> instrumentNotKept(CheckedUnit checked) {
    return unmet(
        neededByProfiles(checked.unit(), profile -> profile.settings().map(Settings::instrument)),
        room -> room.keeps().instruments());
  }

  private static List<Finding> electrodeNotKept(CheckedUnit checked) {
    Unit unit = checked.unit();
    return unmet(
        neededByProfiles(
            unit,
            profile ->
                profile
                    .settings()
                    .flatMap(Settings::neutralElectrode)
                    .filter(
                        it -> ElectrodeDoubt.of(unit, profile, it.value()) == ElectrodeDoubt.NONE)),
        room -> room.keeps().neutralElectrodes());
  }

  private static <T extends Thing> List<Need<T>> neededByProfiles(
      Unit unit, Function<Profile, Optional<Fact<T>>> what) {
    List<Need<T>> needs = new ArrayList<>();
    for (Room room : unit.rooms()) {
      for (Profile profile : unit.profilesServing(room)) {
        what.apply(profile)
            .map(it -> new Need<>(room, it, "profile '" + profile.id().slug() + "'"))
            .ifPresent(needs::add);
      }
    }
    return needs;
  }

  /** An instrument that an answer uses here is reported through its missing cable. */
  private static List<Finding> keptInstrumentUnreached(CheckedUnit checked) {
    Unit unit = checked.unit();
    List<Finding> found = new ArrayList<>();
    for (Room room : unit.rooms()) {
      List<Fact<Instrument>> used =
          unit.profilesServing(room).stream()
              .flatMap(profile -> profile.settings().map(Settings::instrument).stream())
              .toList();
      room.keeps().instruments().stream()
          .filter(it -> !keeps(used, it.value()))
          .filter(it -> sockets(unit, room).noneMatch(socket -> reaches(room, it.value(), socket)))
          .map(
              it ->
                  Finding.at(
                          it.at(),
                          "%s is kept in %s, but nothing kept there joins it to a socket"
                              .formatted(Wording.quoted(it.value()), Wording.quoted(room)))
                      .note(it.value().connector().at(), "its connector")
                      .help(
                          "check the connector and the cables; add the cable that is kept for it, or remove the instrument"))
          .forEach(found::add);
    }
    return found;
  }

  private static Stream<Socket> sockets(Unit unit, Room room) {
    return unit.machinesIn(room).stream().flatMap(machine -> machine.sockets().stream());
  }

  private static boolean reaches(Room room, Instrument instrument, Socket socket) {
    return Chains.in(room).shortest(instrument, socket).isPresent();
  }

  private static List<Finding> cableIntoSocketOfOtherKind(CheckedUnit checked) {
    Unit unit = checked.unit();
    Map<List<ThingId>, Finding> found = new LinkedHashMap<>();
    for (Room room : unit.rooms()) {
      for (Fact<Instrument> kept : room.keeps().instruments()) {
        sockets(unit, room)
            .filter(socket -> isOfOtherKind(socket, kept.value()))
            .forEach(
                socket ->
                    Chains.in(room).between(kept.value(), socket).stream()
                        .filter(chain -> !chain.cables().isEmpty())
                        .map(chain -> chain.cables().get(chain.cables().size() - 1))
                        .forEach(
                            cable ->
                                found.putIfAbsent(
                                    List.of(cable.id(), socket.id()),
                                    intoOtherKind(cable, kept.value(), socket))));
      }
    }
    return List.copyOf(found.values());
  }

  private static boolean isOfOtherKind(Socket socket, Instrument instrument) {
    return socket
        .kind()
        .value()
        .energy()
        .filter(kind -> kind != instrument.kind().value())
        .isPresent();
  }

  private static Finding intoOtherKind(Cable cable, Instrument instrument, Socket socket) {
    return Finding.at(
            cable.at(),
            "%s lets %s, which is %s, into socket %s, which is %s"
                .formatted(
                    Wording.quoted(cable),
                    Wording.quoted(instrument),
                    instrument.kind().value().spoken(),
                    Wording.quoted(socket),
                    socket.kind().value().spoken()))
        .note(socket.kind().at(), "the socket's kind")
        .help(
            "check the plug and the connector of the cable; if it does fit there, keep it out of the room");
  }

  private static List<Finding> cableNotKept(CheckedUnit checked) {
    Unit unit = checked.unit();
    List<Finding> found = new ArrayList<>();
    for (Room room : unit.rooms()) {
      unit.profilesServing(room).stream()
          .flatMap(
              profile ->
                  profile.settings().stream().flatMap(it -> missingCable(unit, room, profile, it)))
          .collect(
              Collectors.groupingBy(it -> it.cable().id(), LinkedHashMap::new, Collectors.toList()))
          .values()
          .forEach(same -> found.add(cableNotKept(same)));
    }
    return found;
  }

  private static Stream<MissingCable> missingCable(
      Unit unit, Room room, Profile profile, Settings settings) {
    Stream<MissingCable> instrument =
        keeps(room.keeps().instruments(), settings.instrument().value())
            ? missingCable(unit, room, settings.instrument(), List.of(settings.socket().value()))
                .stream()
            : Stream.of();
    List<Socket> neutral =
        profile.machine().value().sockets().stream()
            .filter(socket -> socket.kind().value() == SocketKind.NEUTRAL)
            .toList();
    Stream<MissingCable> electrode =
        settings.neutralElectrode().stream()
            .filter(it -> keeps(room.keeps().neutralElectrodes(), it.value()))
            .flatMap(it -> missingCable(unit, room, it, neutral).stream());
    return Stream.concat(instrument, electrode);
  }

  private static <T extends Thing> boolean keeps(List<Fact<T>> kept, T thing) {
    return kept.stream().anyMatch(it -> it.value().id().equals(thing.id()));
  }

  private static Optional<MissingCable> missingCable(
      Unit unit, Room room, Fact<? extends PatientPart> end, List<Socket> sockets) {
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
                    .map(cable -> new MissingCable(room, end, socket, cable)))
        .findFirst();
  }

  private static Finding cableNotKept(List<MissingCable> same) {
    MissingCable first = same.get(0);
    Room room = first.room();
    Location at =
        room.keeps().cables().stream().findFirst().map(Fact::at).orElse(room.keeps().at());
    List<PatientPart> ends =
        same.stream().<PatientPart>map(it -> it.end().value()).distinct().toList();
    return Finding.at(
            at,
            "%s keeps no cable that joins %s to socket %s"
                .formatted(
                    Wording.quoted(room),
                    Wording.quoted(ends),
                    Wording.quoted(same.stream().map(MissingCable::socket).toList())))
        .note(first.end().at(), "a profile of the room that needs it")
        .note(first.cable().at(), "one such cable is " + Wording.quoted(first.cable()))
        .help("add the cable or adaptor to what the room keeps");
  }

  private static List<Finding> spareNotKept(CheckedUnit checked) {
    Unit unit = checked.unit();
    List<Need<Accessory>> needs = new ArrayList<>();
    for (Room room : unit.rooms()) {
      for (Drill drill : unit.drills()) {
        if (unit.machinesIn(room).stream().anyMatch(drill.appliesTo()::holds)) {
          drill.checks().stream()
              .flatMap(check -> check.needs().stream())
              .map(it -> new Need<>(room, it, "the drill " + Wording.quoted(drill)))
              .forEach(needs::add);
        }
      }
    }
    return unmet(needs, room -> room.keeps().spares());
  }

  private static List<Finding> sparesPlaceMissing(CheckedUnit checked) {
    return checked.unit().rooms().stream()
        .filter(room -> room.keeps().sparesWhere().isEmpty())
        .filter(room -> !room.keeps().spares().isEmpty())
        .map(
            room ->
                Finding.at(
                        room.keeps().spares().get(0).at(),
                        Wording.quoted(room) + " keeps spares but does not say where")
                    .help("add 'spares-where' in the words that staff use"))
        .toList();
  }

  /**
   * The needs that their rooms do not meet, one for each mistake. What several rooms lack is
   * reported where it is named. What one room lacks is reported in that room.
   */
  private static <T extends Thing> List<Finding> unmet(
      List<Need<T>> needs, Function<Room, List<Fact<T>>> kept) {
    List<Finding> found = new ArrayList<>();
    needs.stream()
        .collect(
            Collectors.groupingBy(
                need -> need.named().value().id(), LinkedHashMap::new, Collectors.toList()))
        .values()
        .forEach(same -> found.addAll(unmetOf(same, kept)));
    return found;
  }

  private static <T extends Thing> List<Finding> unmetOf(
      List<Need<T>> same, Function<Room, List<Fact<T>>> kept) {
    List<Need<T>> lacking = same.stream().filter(need -> !need.metBy(kept)).toList();
    List<Room> rooms = lacking.stream().map(Need::room).distinct().toList();
    long needing = same.stream().map(Need::room).distinct().count();
    if (rooms.size() > 2 || (rooms.size() > 1 && rooms.size() == needing)) {
      return List.of(lacking.get(0).keptNowhere(rooms));
    }
    return rooms.stream()
        .flatMap(room -> lacking.stream().filter(it -> it.room().equals(room)).limit(1))
        .map(need -> need.notKept(kept))
        .toList();
  }
}
