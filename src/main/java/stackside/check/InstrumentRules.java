package stackside.check;

import static stackside.check.Rule.error;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.derive.chain.Chains;
import stackside.model.EnergyKind;
import stackside.model.Instrument;
import stackside.model.Kind;
import stackside.model.Mode;
import stackside.model.PedalSetting;
import stackside.model.Profile;
import stackside.model.Settings;
import stackside.model.Socket;
import stackside.model.ThingId;
import stackside.model.Unit;

/** Instruments, and the sockets and modes that they meet. */
final class InstrumentRules {

  private InstrumentRules() {}

  static List<Rule<CheckedUnit>> rules() {
    return List.of(
        error(
            "socket-of-wrong-kind",
            "a socket is of a different kind from the instrument and the modes",
            InstrumentRules::socketOfWrongKind),
        error(
            "mode-of-wrong-kind",
            "a mode is of a different kind from the instrument",
            InstrumentRules::modeOfWrongKind),
        error(
            "instrument-of-wrong-kind",
            "an instrument is of a different kind from its socket and modes",
            InstrumentRules::instrumentOfWrongKind),
        error(
            "instrument-cannot-reach-socket",
            "no cable joins an instrument to the socket of its profile",
            InstrumentRules::instrumentCannotReachSocket));
  }

  private static List<Finding> socketOfWrongKind(CheckedUnit checked) {
    return checked.unit().profiles().stream()
        .flatMap(profile -> profile.settings().stream())
        .flatMap(settings -> socketOfWrongKind(settings).stream())
        .toList();
  }

  private static Optional<Finding> socketOfWrongKind(Settings settings) {
    EnergyKind instrument = settings.instrument().value().kind().value();
    Socket socket = settings.socket().value();
    boolean modesAgree =
        settings.assigned().stream().allMatch(it -> it.mode().value().kind().value() == instrument);
    if (!modesAgree || socket.kind().value().energy().equals(Optional.of(instrument))) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.at(
                settings.socket().at(),
                "socket %s is %s, but %s is %s"
                    .formatted(
                        Wording.quoted(socket),
                        socket.kind().value().spoken(),
                        Wording.quoted(settings.instrument().value()),
                        instrument.spoken()))
            .note(socket.kind().at(), "where the machine's description says so")
            .help("name the socket that this instrument goes into"));
  }

  private static List<Finding> modeOfWrongKind(CheckedUnit checked) {
    List<Finding> found = new ArrayList<>();
    for (Profile profile : checked.unit().profiles()) {
      profile
          .settings()
          .filter(it -> !instrumentIsTheOddOne(it))
          .ifPresent(it -> modeOfWrongKind(it, found));
    }
    return found;
  }

  private static boolean instrumentIsTheOddOne(Settings settings) {
    return settings.assigned().stream()
        .map(it -> Optional.of(it.mode().value().kind().value()))
        .allMatch(settings.socket().value().kind().value().energy()::equals);
  }

  private static void modeOfWrongKind(Settings settings, List<Finding> found) {
    Instrument instrument = settings.instrument().value();
    for (PedalSetting setting : settings.assigned()) {
      Mode mode = setting.mode().value();
      if (mode.kind().value() != instrument.kind().value()) {
        found.add(
            Finding.at(
                    setting.mode().at(),
                    "%s is a %s mode, but %s is %s"
                        .formatted(
                            Wording.quoted(mode),
                            mode.kind().value().spoken(),
                            Wording.quoted(instrument),
                            instrument.kind().value().spoken()))
                .note(mode.kind().at(), "where the machine's description says so")
                .help("name a mode of the instrument's kind, or another instrument"));
      }
    }
  }

  private static List<Finding> instrumentOfWrongKind(CheckedUnit checked) {
    return checked.unit().profiles().stream()
        .flatMap(profile -> profile.settings().stream())
        .flatMap(settings -> instrumentOfWrongKind(settings).stream())
        .toList();
  }

  private static Optional<Finding> instrumentOfWrongKind(Settings settings) {
    Instrument instrument = settings.instrument().value();
    Optional<EnergyKind> socket = settings.socket().value().kind().value().energy();
    boolean othersAgree =
        !settings.assigned().isEmpty()
            && settings.assigned().stream()
                .allMatch(it -> socket.equals(Optional.of(it.mode().value().kind().value())));
    if (!othersAgree || socket.equals(Optional.of(instrument.kind().value()))) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.at(
                settings.instrument().at(),
                "%s is %s, but its socket and modes are %s"
                    .formatted(
                        Wording.quoted(instrument),
                        instrument.kind().value().spoken(),
                        socket.orElseThrow().spoken()))
            .note(instrument.kind().at(), "the instrument's kind")
            .help("name the instrument that belongs to these settings"));
  }

  private static List<Finding> instrumentCannotReachSocket(CheckedUnit checked) {
    Unit unit = checked.unit();
    if (unit.anyBroken(Kind.CABLE) || unit.anyBroken(Kind.ROOM)) {
      return List.of();
    }
    Chains chains = new Chains(unit.cables());
    Map<ThingId, List<Settings>> apart = new LinkedHashMap<>();
    for (Profile profile : unit.profiles()) {
      profile
          .settings()
          .filter(InstrumentRules::kindsAgree)
          .filter(it -> chains.shortest(it.instrument().value(), it.socket().value()).isEmpty())
          .ifPresent(
              it ->
                  apart
                      .computeIfAbsent(it.instrument().value().id(), id -> new ArrayList<>())
                      .add(it));
    }
    return apart.values().stream().flatMap(InstrumentRules::instrumentCannotReachSocket).toList();
  }

  private static boolean kindsAgree(Settings settings) {
    return settings
        .socket()
        .value()
        .kind()
        .value()
        .energy()
        .equals(Optional.of(settings.instrument().value().kind().value()));
  }

  /** If it fits none of several sockets, its own connector is the one mistake. */
  private static Stream<Finding> instrumentCannotReachSocket(List<Settings> same) {
    Instrument instrument = same.get(0).instrument().value();
    List<Socket> sockets = same.stream().map(it -> it.socket().value()).distinct().toList();
    if (sockets.size() > 1) {
      return Stream.of(
          Finding.at(
                  instrument.connector().at(),
                  "no cable joins %s, whose connector is '%s', to any of the sockets that profiles give it"
                      .formatted(Wording.quoted(instrument), instrument.connector().value()))
              .help("correct the connector, or add the cable to cables.yaml"));
    }
    Settings first = same.get(0);
    return Stream.of(
        Finding.at(
                first.socket().at(),
                "no cable joins %s to socket %s"
                    .formatted(Wording.quoted(instrument), Wording.quoted(sockets.get(0))))
            .note(
                instrument.connector().at(),
                "the instrument's connector is '" + instrument.connector().value() + "'")
            .note(
                sockets.get(0).at(),
                "the socket takes "
                    + Wording.list(
                        sockets.get(0).takes().stream().map(it -> "'" + it.value() + "'").toList()))
            .help("name another socket, or add the cable or adaptor to cables.yaml"));
  }
}
