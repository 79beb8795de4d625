package stackside.derive.circuit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.derive.output.ModeSetting;
import stackside.model.Condition;
import stackside.model.EnergyKind;
import stackside.model.Evidence;
import stackside.model.Fact;
import stackside.model.OutputSeen;
import stackside.model.Response;
import stackside.model.SelectionKind;
import stackside.model.Socket;
import stackside.model.SocketKind;
import stackside.model.Tone;

/**
 * The effect of pressing a pedal in a state of the circuit: which sockets go live, which condition
 * the machine detects, what it shows and sounds, and how the current returns.
 */
final class Activation {
  private final CircuitState state;
  private final PedalMeaning meaning;
  private final List<Socket> candidates;
  private final List<Occupant> reached;
  private final Optional<Condition> condition;
  private final Optional<Response> answer;
  private final Observation observed;
  private final List<LiveSocket> live;
  private final ReturnPath returnPath;

  /**
   * Presses a pedal.
   *
   * @param meaning what the pressed pedal does in the active program
   */
  Activation(CircuitState state, PedalMeaning meaning) {
    this.state = state;
    this.meaning = meaning;
    this.candidates = asked() ? candidates() : List.of();
    this.reached = reached();
    this.condition =
        Stream.of(Condition.values())
            .filter(this::meets)
            .min(Comparator.comparingInt(Activation::precedence));
    this.answer = condition.flatMap(met -> state.machine().answer(met)).filter(Activation::isKnown);
    this.observed = whatIsObserved();
    this.live = whatIsLive();
    this.returnPath = wayBack();
  }

  /**
   * The condition that the machine detects; if several things are wrong, the one it reports first.
   */
  Optional<Condition> condition() {
    return condition;
  }

  PedalMeaning meaning() {
    return meaning;
  }

  private static int precedence(Condition condition) {
    return switch (condition) {
      case MAINS_OFF -> 1;
      case FOOT_SWITCH_MISSING -> 2;
      case NEUTRAL_CIRCUIT_OPEN -> 3;
      case NEUTRAL_CONTACT_POOR -> 4;
      case SELECTED_SOCKET_EMPTY -> 5;
      case ARGON_EMPTY -> 6;
      case INSTRUMENT_CIRCUIT_OPEN -> 7;
    };
  }

  private boolean meets(Condition condition) {
    return switch (condition) {
      case MAINS_OFF -> state.lacks(Supply.MAINS);
      case FOOT_SWITCH_MISSING -> state.lacks(Supply.FOOT_SWITCH);
      case NEUTRAL_CIRCUIT_OPEN, NEUTRAL_CONTACT_POOR ->
          asked()
              && needsNeutral()
              && Monitoring.condition(state).stream().anyMatch(condition::equals);
      case SELECTED_SOCKET_EMPTY -> asked() && feelsNoPlug();
      case ARGON_EMPTY ->
          kind().stream().anyMatch(EnergyKind.ARGON::equals) && state.lacks(Supply.ARGON);
      case INSTRUMENT_CIRCUIT_OPEN -> asked() && reached.isEmpty();
    };
  }

  /** Whether the pedal asks for any current. */
  private boolean asked() {
    return !(meaning instanceof PedalMeaning.Nothing);
  }

  private Optional<EnergyKind> kind() {
    return meaning.known().map(setting -> setting.mode().kind().value());
  }

  /** The sockets that the pedal would make live if nothing prevented it. */
  private List<Socket> candidates() {
    if (state.selectedBy() == SelectedBy.FIXED) {
      return alwaysLive();
    }
    return state.selected().stream().filter(this::carries).toList();
  }

  /**
   * If nothing is ever selected, the mode's kind decides: the socket that is live from power-on if
   * it is of that kind, otherwise every socket of that kind together.
   */
  private List<Socket> alwaysLive() {
    List<Socket> ofTheKind =
        state.machine().sockets().stream().filter(this::carries).filter(this::isMeant).toList();
    List<Socket> fromPowerOn =
        ofTheKind.stream()
            .filter(
                socket ->
                    state.machine().socketAtPowerOn().stream()
                        .anyMatch(always -> always.id().equals(socket.id())))
            .toList();
    return fromPowerOn.isEmpty() ? ofTheKind : fromPowerOn;
  }

  /** Some machines have a separate socket for argon; on others it shares the monopolar one. */
  private boolean isMeant(Socket socket) {
    boolean argonSocket = socket.kind().value() == SocketKind.ARGON;
    return kind()
        .map(
            mode ->
                switch (mode) {
                  case MONOPOLAR -> !argonSocket;
                  case ARGON -> argonSocket || !hasArgonSocket();
                  case BIPOLAR -> true;
                })
        .orElse(true);
  }

  private boolean hasArgonSocket() {
    return state.machine().sockets().stream()
        .anyMatch(socket -> socket.kind().value() == SocketKind.ARGON);
  }

  private boolean carries(Socket socket) {
    return switch (socket.kind().value()) {
      case MONOPOLAR, ARGON -> kind().map(mode -> mode != EnergyKind.BIPOLAR).orElse(true);
      case BIPOLAR -> kind().map(mode -> mode == EnergyKind.BIPOLAR).orElse(true);
      case NEUTRAL, FOOT_SWITCH -> false;
    };
  }

  private boolean feelsNoPlug() {
    if (candidates.isEmpty()) {
      return selectsByPlug() && state.selected().isEmpty();
    }
    return candidates.stream()
        .allMatch(
            socket -> senses(socket) && state.in(socket).stream().noneMatch(Activation::felt));
  }

  private static boolean felt(Occupant occupant) {
    return occupant.integrity().sensed();
  }

  /**
   * A machine that selects by plugging in must sense the plug, whatever else its description says.
   */
  private boolean senses(Socket socket) {
    return socket.noticesPlug() || selectsByPlug();
  }

  private boolean selectsByPlug() {
    return state.machine().selectsSocket().value() == SelectionKind.BY_PLUGGING_IN;
  }

  /** The instruments that would get current if the circuit were closed on the active side. */
  private List<Occupant> reached() {
    return candidates.stream()
        .flatMap(socket -> state.in(socket).stream())
        .filter(this::closes)
        .toList();
  }

  /** A monopolar instrument connects to only one pole of a bipolar socket. */
  private boolean closes(Occupant occupant) {
    boolean bipolar = occupant.socket().kind().value() == SocketKind.BIPOLAR;
    return occupant.integrity().conducts()
        && (!bipolar || occupant.instrument().kind().value() == EnergyKind.BIPOLAR);
  }

  private boolean needsNeutral() {
    return kind()
        .map(mode -> mode != EnergyKind.BIPOLAR)
        .orElseGet(
            () ->
                candidates.stream()
                    .anyMatch(socket -> socket.kind().value() != SocketKind.BIPOLAR));
  }

  private static boolean isKnown(Response response) {
    return response.tone().isPresent()
        && response.output().isPresent()
        && response.evidence().value().basis() != Evidence.Basis.UNKNOWN;
  }

  /** What is seen and heard. An unknown response is assumed to be silent. */
  Observation observed() {
    return observed;
  }

  private Observation whatIsObserved() {
    if (condition.isEmpty()) {
      return asked() ? Observation.asUsual() : Observation.nothingHappens();
    }
    return answer
        .map(response -> Observation.of(condition.orElseThrow(), response))
        .orElseGet(Observation::asUsual);
  }

  /** How we know what is observed, if it does not follow from the circuit alone. */
  Optional<Evidence> evidence() {
    if (condition.isEmpty()) {
      return asked() ? Optional.empty() : Optional.of(Evidence.of(Evidence.Basis.ASSUMED));
    }
    return Optional.of(
        answer
            .map(response -> response.evidence().value())
            .orElse(Evidence.of(Evidence.Basis.UNKNOWN)));
  }

  Optional<OutputSeen> output() {
    return answer.flatMap(Response::output).map(Fact::value);
  }

  /** The sockets that carry voltage, including open circuits that raise no alarm. */
  List<LiveSocket> live() {
    return live;
  }

  private List<LiveSocket> whatIsLive() {
    if (state.lacks(Supply.MAINS) || state.lacks(Supply.FOOT_SWITCH) || blocked()) {
      return List.of();
    }
    return candidates.stream()
        .map(socket -> new LiveSocket(socket, meaning, state.in(socket)))
        .toList();
  }

  private boolean blocked() {
    boolean none = output().stream().anyMatch(OutputSeen.NONE::equals);
    boolean open = condition.stream().anyMatch(Condition.INSTRUMENT_CIRCUIT_OPEN::equals);
    return none && !(open && observed.tone() != Tone.ALARM);
  }

  ReturnPath returnPath() {
    return returnPath;
  }

  private ReturnPath wayBack() {
    if (live.isEmpty() || reached.isEmpty()) {
      return ReturnPath.NONE;
    }
    if (!needsNeutral()) {
      return ReturnPath.BETWEEN_POLES;
    }
    return switch (state.neutral()) {
      case ON_SKIN -> ReturnPath.NEUTRAL_ELECTRODE;
      case PARTLY_OFF -> ReturnPath.PART_OF_NEUTRAL_ELECTRODE;
      case NOT_USED, OFF_SKIN, CABLE_OUT, CABLE_BROKEN -> ReturnPath.STRAY;
    };
  }

  /** The instruments that carry voltage and have an unbroken path to the tip. */
  List<Occupant> energised() {
    return live.isEmpty() ? List.of() : reached;
  }

  /**
   * What reaches the instrument in hand, compared with what was approved for the intended pedal.
   */
  Reach reach(Optional<ModeSetting> approved) {
    boolean comesBack =
        switch (returnPath) {
          case NEUTRAL_ELECTRODE, PART_OF_NEUTRAL_ELECTRODE, BETWEEN_POLES -> true;
          case STRAY, NONE -> false;
        };
    boolean inHand =
        energised().stream().anyMatch(occupant -> occupant.use() == Occupant.Use.IN_HAND);
    if (!comesBack || !inHand || output().stream().anyMatch(OutputSeen.NONE::equals)) {
      return Reach.NOTHING;
    }
    if (condition.stream().anyMatch(Condition.ARGON_EMPTY::equals)) {
      return withoutGas();
    }
    if (output().stream().anyMatch(OutputSeen.WEAK::equals)) {
      return Reach.LESS;
    }
    if (meaning.known().isEmpty()) {
      return Reach.UNKNOWN_SETTING;
    }
    return meaning.known().equals(approved) ? Reach.AS_APPROVED : Reach.ANOTHER_SETTING;
  }

  /** Without gas there is no plasma; at most, current flows where the probe touches. */
  private Reach withoutGas() {
    return output().isPresent() ? Reach.LESS : Reach.NOTHING;
  }
}
