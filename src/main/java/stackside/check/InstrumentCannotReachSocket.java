package stackside.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.derive.chain.Chains;
import stackside.model.Instrument;
import stackside.model.Kind;
import stackside.model.Profile;
import stackside.model.Settings;
import stackside.model.Socket;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds instruments that no cable of the whole unit joins to the socket of their profile. */
final class InstrumentCannotReachSocket implements Rule {
  private static final Fault FAULT =
      new Fault(
          "instrument-cannot-reach-socket",
          Severity.ERROR,
          "no cable joins an instrument to the socket of its profile");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    Unit unit = analysis.unit();
    if (unit.anyBroken(Kind.CABLE) || unit.anyBroken(Kind.ROOM)) {
      return List.of();
    }
    Chains chains = new Chains(unit.cables());
    Map<ThingId, List<Settings>> apart = new LinkedHashMap<>();
    for (Profile profile : unit.profiles()) {
      profile
          .settings()
          .filter(InstrumentCannotReachSocket::kindsAgree)
          .filter(it -> chains.shortest(it.instrument().value(), it.socket().value()).isEmpty())
          .ifPresent(
              it ->
                  apart
                      .computeIfAbsent(it.instrument().value().id(), id -> new ArrayList<>())
                      .add(it));
    }
    return apart.values().stream().flatMap(InstrumentCannotReachSocket::problems).toList();
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

  /** If it reaches none of several sockets, its own connector is the one mistake. */
  private static Stream<Problem> problems(List<Settings> same) {
    Instrument instrument = same.get(0).instrument().value();
    List<Socket> sockets = same.stream().map(it -> it.socket().value()).distinct().toList();
    if (sockets.size() > 1) {
      return Stream.of(
          FAULT
              .at(
                  instrument.connector().at(),
                  "no cable joins %s, whose connector is '%s', to any of the sockets that profiles give it"
                      .formatted(Wording.quoted(instrument), instrument.connector().value()))
              .help("correct the connector, or add the cable to cables.yaml"));
    }
    Settings first = same.get(0);
    return Stream.of(
        FAULT
            .at(
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
