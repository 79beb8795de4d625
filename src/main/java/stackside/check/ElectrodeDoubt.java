package stackside.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import stackside.derive.chain.Chains;
import stackside.model.Electrode;
import stackside.model.ElectrodeArea;
import stackside.model.Fact;
import stackside.model.Machine;
import stackside.model.MonitorKind;
import stackside.model.Profile;
import stackside.model.Settings;
import stackside.model.SocketKind;
import stackside.model.Unit;
import stackside.source.Problem;

/**
 * What is wrong first with the neutral electrode of a profile: one answer, so that one rule speaks.
 */
enum ElectrodeDoubt {
  NONE,
  OTHER_PLUG,
  IN_ONE_PIECE,
  OTHER_PATIENTS;

  static ElectrodeDoubt of(Unit unit, Profile profile, Electrode electrode) {
    Machine machine = profile.machine().value();
    if (machine.hasSocket(SocketKind.NEUTRAL) && !fits(unit, electrode, machine)) {
      return OTHER_PLUG;
    }
    if (machine.monitor().value() == MonitorKind.CONTACT_QUALITY
        && electrode.area().value() == ElectrodeArea.PLAIN) {
      return IN_ONE_PIECE;
    }
    boolean suits =
        unit.patientsOf(profile).stream()
            .allMatch(group -> electrode.patients().value().covers(group.weight().value()));
    return suits ? NONE : OTHER_PATIENTS;
  }

  private static boolean fits(Unit unit, Electrode electrode, Machine machine) {
    Chains chains = new Chains(unit.cables());
    return machine.sockets().stream()
        .filter(socket -> socket.kind().value() == SocketKind.NEUTRAL)
        .anyMatch(socket -> chains.shortest(electrode, socket).isPresent());
  }

  /** The electrodes that profiles name, where this is what is wrong with them. */
  static List<Named> named(Unit unit, ElectrodeDoubt doubt) {
    List<Named> found = new ArrayList<>();
    for (Profile profile : unit.profiles()) {
      profile
          .settings()
          .flatMap(Settings::neutralElectrode)
          .filter(electrode -> of(unit, profile, electrode.value()) == doubt)
          .ifPresent(electrode -> found.add(new Named(profile, electrode)));
    }
    return found;
  }

  /** A neutral electrode where a profile names it. */
  record Named(Profile profile, Fact<Electrode> electrode) {}

  /**
   * One problem for each electrode that is doubted: where a profile names it, or, if several do, at
   * the fact about the electrode that they all stumble over.
   */
  static List<Problem> problems(
      Unit unit,
      ElectrodeDoubt doubt,
      Function<Named, Problem> single,
      Function<List<Named>, Problem> several) {
    return named(unit, doubt).stream()
        .collect(
            Collectors.groupingBy(
                it -> it.electrode().value().id(), LinkedHashMap::new, Collectors.toList()))
        .values()
        .stream()
        .map(same -> same.size() == 1 ? single.apply(same.get(0)) : several.apply(same))
        .toList();
  }

  /** The machines of these profiles, in words. */
  static String machines(List<Named> named) {
    return Wording.quoted(named.stream().map(it -> it.profile().machine().value()).toList());
  }

  /** How many profiles name it, in words. */
  static String count(List<Named> named) {
    return named.size() + " profiles name it";
  }
}
