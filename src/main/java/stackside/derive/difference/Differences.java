package stackside.derive.difference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stackside.derive.circuit.Circuits;
import stackside.derive.circuit.FailureSign;
import stackside.derive.circuit.OutcomeClass;
import stackside.derive.coverage.Cell;
import stackside.derive.coverage.Coverage;
import stackside.model.Accessory;
import stackside.model.Answer;
import stackside.model.Cold;
import stackside.model.Condition;
import stackside.model.Fact;
import stackside.model.FootSwitch;
import stackside.model.Instrument;
import stackside.model.RoomStock;
import stackside.model.Machine;
import stackside.model.NotApproved;
import stackside.model.Premises;
import stackside.model.Profile;
import stackside.model.Response;
import stackside.model.Settings;
import stackside.model.SingleFault;
import stackside.model.Socket;
import stackside.model.ThingId;
import stackside.model.Unit;

/**
 * What differs at the generator somebody goes to, compared with the one they are used to; most
 * dangerous first.
 */
public record Differences(RoomAtAsset from, RoomAtAsset to, List<Difference> all) {
  /**
   * A thousand places would need a million pages for all pairs, and nobody changes between most of
   * them.
   */
  private static final int MOST_COMPARED = 12;

  public Differences {
    all = List.copyOf(all);
  }

  /** Every generator in every room of a unit. */
  public static List<RoomAtAsset> places(Unit unit) {
    return unit.rooms().stream()
        .flatMap(room -> room.assets().stream().map(asset -> new RoomAtAsset(room, asset.value())))
        .toList();
  }

  /**
   * Compares every place with every other, in both directions; in a large unit, only with the
   * nearest.
   */
  public static List<Differences> of(Unit unit, Coverage coverage, Circuits circuits) {
    List<Known> places =
        places(unit).stream().map(place -> Known.of(unit, coverage, circuits, place)).toList();
    return places.stream()
        .flatMap(from -> others(from, places).map(to -> between(unit, from, to)))
        .toList();
  }

  /** Places in the same hospital first, then the others in content order. */
  private static Stream<Known> others(Known from, List<Known> places) {
    List<Known> others = places.stream().filter(to -> !to.place().is(from.place())).toList();
    if (others.size() <= MOST_COMPARED) {
      return others.stream();
    }
    return Stream.concat(
            others.stream().filter(to -> to.place().isNear(from.place())),
            others.stream().filter(to -> !to.place().isNear(from.place())))
        .limit(MOST_COMPARED);
  }

  public static Differences between(
      Unit unit, Coverage coverage, Circuits circuits, RoomAtAsset from, RoomAtAsset to) {
    return between(
        unit, Known.of(unit, coverage, circuits, from), Known.of(unit, coverage, circuits, to));
  }

  private static Differences between(Unit unit, Known here, Known there) {
    RoomAtAsset from = here.place();
    RoomAtAsset to = there.place();
    List<Difference> all = new ArrayList<>();
    selection(from.machine(), to.machine(), all);
    faults(here, there, all);
    pedals(unit, from, to, all);
    answers(here, there, all);
    programs(here, there, all);
    conditions(from.machine(), to.machine(), all);
    sockets(unit, here, there, all);
    settings(here, there, all);
    kept(from, to, all);
    spares(from, to, all);
    contacts(from, to, all);
    all.sort(Comparator.comparing(Difference::rank));
    return new Differences(from, to, all);
  }

  /** What every comparison of a place needs to know about it. */
  private record Known(
      RoomAtAsset place, List<FailureSign> signs, List<Cell> cells, List<Profile> profiles) {
    static Known of(Unit unit, Coverage coverage, Circuits circuits, RoomAtAsset place) {
      return new Known(
          place,
          circuits.signsIn(place.room(), place.asset()),
          coverage.of(place.room(), place.asset()),
          unit.profilesServing(place.room()).stream()
              .filter(profile -> profile.machine().value().id().equals(place.machine().id()))
              .toList());
    }
  }

  private static void selection(Machine from, Machine to, List<Difference> all) {
    if (from.selectsSocket().value() != to.selectsSocket().value()) {
      all.add(
          new Difference.SelectionChanged(
              from.selectsSocket().value(), to.selectsSocket().value()));
    }
    if (from.monitor().value() != to.monitor().value()) {
      all.add(new Difference.MonitorChanged(from.monitor().value(), to.monitor().value()));
    }
  }

  private static void faults(Known from, Known to, List<Difference> all) {
    for (SingleFault fault : SingleFault.values()) {
      List<FailureSign> here = of(from.signs(), fault);
      List<FailureSign> there = of(to.signs(), fault);
      worst(here)
          .ifPresent(
              before ->
                  worst(there)
                      .filter(after -> after != before)
                      .ifPresent(
                          after ->
                              all.add(
                                  new Difference.FaultOutcomeChanged(
                                      fault, before, after, here, there))));
    }
  }

  private static List<FailureSign> of(List<FailureSign> signs, SingleFault fault) {
    return signs.stream().filter(sign -> sign.fault() == fault).toList();
  }

  private static Optional<OutcomeClass> worst(List<FailureSign> signs) {
    return signs.stream().map(FailureSign::outcomeClass).min(Comparator.naturalOrder());
  }

  private static void pedals(Unit unit, RoomAtAsset from, RoomAtAsset to, List<Difference> all) {
    List<FootSwitch> here = unit.footSwitchesFor(from.room(), from.machine());
    List<FootSwitch> there = unit.footSwitchesFor(to.room(), to.machine());
    for (FootSwitch other : there) {
      here.stream()
          .findFirst()
          .filter(used -> here.stream().noneMatch(each -> Difference.OtherPedals.same(each, other)))
          .ifPresent(used -> all.add(new Difference.OtherPedals(used, other)));
    }
  }

  private static void answers(Known from, Known to, List<Difference> all) {
    Map<List<ThingId>, Cell> asked = new LinkedHashMap<>();
    from.cells().forEach(cell -> asked.put(question(cell), cell));
    for (Cell there : to.cells()) {
      Cell here = asked.get(question(there));
      if (here != null
          && kind(here).isPresent()
          && kind(there).isPresent()
          && !kind(here).equals(kind(there))) {
        all.add(new Difference.AnswerOfOtherKind(here, there));
      }
    }
  }

  /** Tasks done with current in both places: each pair of answers once, whatever the site. */
  private static void settings(Known from, Known to, List<Difference> all) {
    Map<List<ThingId>, Cell> asked = new LinkedHashMap<>();
    from.cells().forEach(cell -> asked.put(question(cell), cell));
    Set<List<ThingId>> told = new LinkedHashSet<>();
    for (Cell there : to.cells()) {
      Optional<Profile> before =
          Optional.ofNullable(asked.get(question(there))).flatMap(cell -> cell.cover().answer());
      Optional<Profile> now = there.cover().answer();
      if (before.flatMap(Profile::settings).isPresent()
          && now.flatMap(Profile::settings).isPresent()
          && told.add(List.of(before.get().id(), now.get().id()))
          && !Difference.OtherSetting.same(
              before.get().settings().get(), now.get().settings().get())) {
        all.add(new Difference.OtherSetting(before.get(), now.get()));
      }
    }
  }

  private static void spares(RoomAtAsset from, RoomAtAsset to, List<Difference> all) {
    Optional<String> here = from.room().keeps().sparesWhere().map(Fact::value);
    Optional<String> there = to.room().keeps().sparesWhere().map(Fact::value);
    if (here.isPresent() && there.isPresent() && !here.equals(there)) {
      all.add(new Difference.SparesElsewhere(here.get(), there.get()));
    }
  }

  private static void contacts(RoomAtAsset from, RoomAtAsset to, List<Difference> all) {
    Premises here = from.room().location().value();
    Premises there = to.room().location().value();
    if (!here.id().equals(there.id())) {
      all.add(new Difference.OtherContacts(here, there));
    }
  }

  private static List<ThingId> question(Cell cell) {
    return List.of(cell.lesion().id(), cell.site().id(), cell.step().id(), cell.patients().id());
  }

  private enum AnswerKind {
    CURRENT,
    COLD,
    NOT_APPROVED
  }

  private static Optional<AnswerKind> kind(Cell cell) {
    return cell.cover().answer().map(Profile::answer).map(Differences::kind);
  }

  private static AnswerKind kind(Answer answer) {
    if (answer instanceof Cold) {
      return AnswerKind.COLD;
    }
    if (answer instanceof NotApproved) {
      return AnswerKind.NOT_APPROVED;
    }
    if (answer instanceof Settings) {
      return AnswerKind.CURRENT;
    }
    throw new IllegalStateException("an answer of no kind: " + answer);
  }

  private static void programs(Known from, Known to, List<Difference> all) {
    List<ProgramInUse> here = ProgramInUse.of(from.profiles());
    List<ProgramInUse> there = ProgramInUse.of(to.profiles());
    for (ProgramInUse old : here) {
      for (ProgramInUse other : there) {
        boolean alike = old.slot() == other.slot() || old.shownAs().equals(other.shownAs());
        if (alike && !old.means(other)) {
          all.add(new Difference.ProgramMeaningChanged(old, other));
        }
      }
    }
  }

  private static void conditions(Machine from, Machine to, List<Difference> all) {
    for (Condition condition : Condition.values()) {
      Optional<Response> here = from.answer(condition);
      Optional<Response> there = to.answer(condition);
      if (!here.map(Look::of).equals(there.map(Look::of))) {
        all.add(new Difference.ResponseChanged(condition, from, to));
      }
    }
  }

  /** What is seen and heard, wherever this was written and however it is known. */
  private record Look(
      Optional<Object> tone,
      Map<String, String> lamps,
      Optional<String> display,
      Optional<Object> output) {
    static Look of(Response response) {
      Map<String, String> lamps = new LinkedHashMap<>();
      response.lamps().forEach((lamp, colour) -> lamps.put(lamp.slug(), colour.value()));
      return new Look(
          response.tone().map(Fact::value),
          lamps,
          response.display().map(Fact::value),
          response.output().map(Fact::value));
    }
  }

  private static void sockets(Unit unit, Known from, Known to, List<Difference> all) {
    Map<ThingId, List<Socket>> here = sockets(from.profiles());
    Map<ThingId, List<Socket>> there = sockets(to.profiles());
    for (Instrument instrument : unit.instruments()) {
      List<Socket> old = here.getOrDefault(instrument.id(), List.of());
      List<Socket> other = there.getOrDefault(instrument.id(), List.of());
      if (!old.isEmpty() && !other.isEmpty() && !labels(old).equals(labels(other))) {
        all.add(new Difference.OtherSocket(instrument, old, other));
      }
    }
  }

  private static List<String> labels(List<Socket> sockets) {
    return sockets.stream().map(socket -> socket.label().value()).sorted().toList();
  }

  private static Map<ThingId, List<Socket>> sockets(List<Profile> profiles) {
    Map<ThingId, List<Socket>> sockets = new LinkedHashMap<>();
    for (Profile profile : profiles) {
      profile
          .settings()
          .ifPresent(
              settings -> {
                List<Socket> known =
                    sockets.computeIfAbsent(
                        settings.instrument().value().id(), id -> new ArrayList<>());
                Socket socket = settings.socket().value();
                if (known.stream().noneMatch(each -> each.id().equals(socket.id()))) {
                  known.add(socket);
                }
              });
    }
    return sockets;
  }

  private static void kept(RoomAtAsset from, RoomAtAsset to, List<Difference> all) {
    onlyIn(from, to, Difference.KeptInOneOnly.Side.FROM, all);
    onlyIn(to, from, Difference.KeptInOneOnly.Side.TO, all);
  }

  private static void onlyIn(
      RoomAtAsset here, RoomAtAsset there, Difference.KeptInOneOnly.Side side, List<Difference> all) {
    kept(here.room().keeps())
        .filter(
            accessory ->
                kept(there.room().keeps()).noneMatch(each -> each.id().equals(accessory.id())))
        .forEach(accessory -> all.add(new Difference.KeptInOneOnly(accessory, side)));
  }

  private static Stream<Accessory> kept(RoomStock keeps) {
    return Stream.<List<? extends Fact<? extends Accessory>>>of(
            keeps.instruments(), keeps.cables(), keeps.neutralElectrodes())
        .flatMap(List::stream)
        .map(Fact::value);
  }

  /** The differences of one rank, in the order found. */
  public List<Difference> ranked(Rank rank) {
    return all.stream().filter(difference -> difference.rank() == rank).toList();
  }
}
