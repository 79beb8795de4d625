package stackside.check;

import java.util.ArrayList;
import java.util.List;
import stackside.derive.Analysis;
import stackside.model.ConnectorId;
import stackside.model.Fact;
import stackside.model.Machine;
import stackside.model.Socket;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds sockets that take a plug whose shape the machine's description does not give. */
final class PlugNotDescribed implements Rule {
  private static final Fault FAULT =
      new Fault(
          "plug-not-described",
          Severity.ERROR,
          "a socket takes a plug whose shape is not described");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    List<Problem> found = new ArrayList<>();
    for (Machine machine : analysis.unit().machines()) {
      for (Socket socket : machine.sockets()) {
        socket.takes().stream()
            .filter(plug -> machine.plug(plug.value()).isEmpty())
            .forEach(plug -> found.add(problem(machine, plug)));
      }
    }
    return found;
  }

  private static Problem problem(Machine machine, Fact<ConnectorId> plug) {
    List<String> known = machine.plugs().stream().map(it -> "'" + it.id() + "'").toList();
    return FAULT
        .at(
            plug.at(),
            "the shape of plug '%s' is not described for %s"
                .formatted(plug.value(), Wording.quoted(machine)))
        .help(
            known.isEmpty()
                ? "add it with its pins under 'plugs'"
                : "add it with its pins under 'plugs', which holds " + Wording.list(known));
  }
}
