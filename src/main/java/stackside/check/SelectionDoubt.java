package stackside.check;

import java.util.List;
import java.util.Optional;
import stackside.model.Machine;
import stackside.model.Socket;

/**
 * What speaks against the way in which a machine is said to select its socket. While that is in
 * doubt, nothing that follows from it is worth a message.
 */
final class SelectionDoubt {
  private SelectionDoubt() {}

  /** Why a machine cannot select its socket as described, or empty if it can. */
  static Optional<String> of(Machine machine) {
    return switch (machine.selectsSocket().value()) {
      case BY_PROGRAM ->
          withoutMeans(machine.programs().isEmpty(), "it stores no programs")
              .or(() -> plugs(machine));
      case BY_PLUGGING_IN ->
          withoutMeans(
              active(machine).stream().noneMatch(Socket::noticesPlug),
              "none of its sockets senses a plug");
      case FIXED ->
          withoutMeans(
              active(machine).size() > 1, "it has more than one socket that delivers current");
      case BY_BUTTON, BY_FOOT_SWITCH -> plugs(machine);
    };
  }

  private static Optional<String> plugs(Machine machine) {
    return withoutMeans(
        machine.sockets().stream().anyMatch(socket -> socket.programOnPlugging().isPresent()),
        "its sockets are described as bringing up a program when plugged into");
  }

  private static Optional<String> withoutMeans(boolean missing, String reason) {
    return missing ? Optional.of(reason) : Optional.empty();
  }

  private static List<Socket> active(Machine machine) {
    return machine.sockets().stream()
        .filter(socket -> socket.kind().value().energy().isPresent())
        .toList();
  }
}
