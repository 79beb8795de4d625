package stackside.check;

import java.util.ArrayList;
import java.util.List;
import stackside.derive.Analysis;
import stackside.derive.chain.Chains;
import stackside.model.Electrode;
import stackside.model.Fact;
import stackside.model.Machine;
import stackside.model.Profile;
import stackside.model.Settings;
import stackside.model.SocketKind;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds neutral electrodes whose plug goes into no neutral socket of the machine. */
final class ElectrodeDoesNotFit implements Rule {
  private static final Fault FAULT =
      new Fault(
          "electrode-does-not-fit",
          Severity.ERROR,
          "a neutral electrode fits no neutral socket of its machine");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    Chains chains = new Chains(analysis.unit().cables());
    List<Problem> found = new ArrayList<>();
    for (Profile profile : analysis.unit().profiles()) {
      profile
          .settings()
          .flatMap(Settings::neutralElectrode)
          .filter(it -> profile.machine().value().hasSocket(SocketKind.NEUTRAL))
          .filter(it -> !fits(chains, it.value(), profile.machine().value()))
          .ifPresent(it -> found.add(problem(it, profile.machine().value())));
    }
    return found;
  }

  private static boolean fits(Chains chains, Electrode electrode, Machine machine) {
    return machine.sockets().stream()
        .filter(socket -> socket.kind().value() == SocketKind.NEUTRAL)
        .anyMatch(socket -> chains.shortest(electrode, socket).isPresent());
  }

  private static Problem problem(Fact<Electrode> electrode, Machine machine) {
    return FAULT
        .at(
            electrode.at(),
            "the plug of %s, '%s', goes into no neutral socket of %s"
                .formatted(
                    Wording.quoted(electrode.value()),
                    electrode.value().plug().value(),
                    Wording.quoted(machine)))
        .note(electrode.value().plug().at(), "where the electrode's plug stands")
        .help("name an electrode that fits, or add the adaptor to cables.yaml");
  }
}
