package stackside.check;

import static stackside.check.Rule.error;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import stackside.model.ConnectorId;
import stackside.model.Fact;
import stackside.model.Machine;
import stackside.model.Mode;
import stackside.model.Socket;
import stackside.model.SocketKind;
import stackside.model.Term;
import stackside.model.Unit;

/** The sockets of a machine, as its description gives them. */
final class SocketRules {

  private SocketRules() {}

  static List<Rule<CheckedUnit>> rules() {
    return List.of(
        error(
            "sockets-in-one-place",
            "two sockets of a machine are in one place",
            SocketRules::socketsInOnePlace),
        error(
            "socket-label-twice",
            "two sockets of a machine have the same label",
            SocketRules::socketLabelTwice),
        error(
            "plug-not-described",
            "a socket takes a plug whose shape is not described",
            SocketRules::plugNotDescribed),
        error(
            "neutral-socket-missing",
            "a machine with monopolar modes has no socket for the neutral electrode",
            SocketRules::neutralSocketMissing),
        error(
            "selection-impossible",
            "a machine cannot select its socket in the way described",
            SocketRules::selectionImpossible));
  }

  private static List<Finding> socketsInOnePlace(CheckedUnit checked) {
    return SocketPair.sharing(checked.unit(), socket -> socket.place().value()).stream()
        .map(pair -> socketsInOnePlace(pair.socket(), pair.first()))
        .toList();
  }

  private static Finding socketsInOnePlace(Socket socket, Socket first) {
    return Finding.at(
            socket.place().at(),
            "%s is where %s is already: %s"
                .formatted(
                    Wording.quoted(socket), Wording.quoted(first), socket.place().value().text()))
        .note(first.place().at(), "the other socket")
        .help("count rows from the top and columns from the left, as seen from the front");
  }

  private static List<Finding> socketLabelTwice(CheckedUnit checked) {
    return SocketPair.sharing(checked.unit(), socket -> socket.label().value()).stream()
        .map(pair -> socketLabelTwice(pair.socket(), pair.first()))
        .toList();
  }

  private static Finding socketLabelTwice(Socket socket, Socket first) {
    return Finding.at(
            socket.label().at(),
            "the label '%s' already belongs to socket '%s'"
                .formatted(socket.label().value(), first.id().local()))
        .note(first.label().at(), "the other socket")
        .help("write the label as printed on the machine; if both are the same, add where it is");
  }

  private static List<Finding> plugNotDescribed(CheckedUnit checked) {
    List<Finding> found = new ArrayList<>();
    for (Machine machine : checked.unit().machines()) {
      for (Socket socket : machine.sockets()) {
        socket.takes().stream()
            .filter(plug -> machine.plug(plug.value()).isEmpty())
            .forEach(plug -> found.add(plugNotDescribed(machine, plug)));
      }
    }
    return found;
  }

  private static Finding plugNotDescribed(Machine machine, Fact<ConnectorId> plug) {
    List<String> known = machine.plugs().stream().map(it -> "'" + it.id() + "'").toList();
    return Finding.at(
            plug.at(),
            "the shape of plug '%s' is not described for %s"
                .formatted(plug.value(), Wording.quoted(machine)))
        .help(
            known.isEmpty()
                ? "add it with its pins under 'plugs'"
                : "add it with its pins under 'plugs', which has " + Wording.list(known));
  }

  private static List<Finding> neutralSocketMissing(CheckedUnit checked) {
    return checked.unit().machines().stream()
        .filter(machine -> !machine.hasSocket(SocketKind.NEUTRAL))
        .flatMap(
            machine ->
                machine.modes().stream()
                    .filter(mode -> mode.kind().value().needsNeutralElectrode())
                    .limit(1)
                    .map(mode -> neutralSocketMissing(checked.unit(), machine, mode)))
        .toList();
  }

  private static Finding neutralSocketMissing(Unit unit, Machine machine, Mode mode) {
    return Finding.at(
            machine.name().at(),
            "%s has %s but no socket for a %s"
                .formatted(
                    Wording.quoted(machine),
                    Wording.quoted(mode),
                    unit.word(Term.NEUTRAL_ELECTRODE)))
        .note(mode.kind().at(), "a mode that needs one")
        .help("add the socket with 'kind: neutral', or correct the kind of an existing one");
  }

  private static List<Finding> selectionImpossible(CheckedUnit checked) {
    return checked.unit().machines().stream()
        .flatMap(
            machine ->
                SelectionDoubt.of(machine).stream()
                    .map(
                        reason ->
                            Finding.at(
                                    machine.selectsSocket().at(),
                                    "%s cannot select its socket %s: %s"
                                        .formatted(
                                            Wording.quoted(machine),
                                            machine.selectsSocket().value().spoken(),
                                            reason))
                                .help("correct how the socket is selected, or the sockets")))
        .toList();
  }

  /**
   * A socket that shares with an earlier one of its machine something that each should have alone.
   */
  private record SocketPair(Socket socket, Socket first) {
    /** All pairs that share something that each should have alone. */
    static List<SocketPair> sharing(Unit unit, Function<Socket, Object> what) {
      List<SocketPair> pairs = new ArrayList<>();
      for (Machine machine : unit.machines()) {
        Map<Object, Socket> taken = new LinkedHashMap<>();
        for (Socket socket : machine.sockets()) {
          Socket first = taken.computeIfAbsent(what.apply(socket), any -> socket);
          if (!first.id().equals(socket.id())) {
            pairs.add(new SocketPair(socket, first));
          }
        }
      }
      return pairs;
    }
  }
}
