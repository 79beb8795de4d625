package stackside.check;

import stackside.derive.chain.Chains;
import stackside.model.Electrode;
import stackside.model.ElectrodeArea;
import stackside.model.Machine;
import stackside.model.MonitorKind;
import stackside.model.Profile;
import stackside.model.SocketKind;
import stackside.model.Unit;

/**
 * The first thing that is wrong with the neutral electrode of a profile. There is only one, so that
 * only one rule reports it.
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
}
