package stackside.derive.circuit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stackside.derive.chain.Chain;
import stackside.derive.chain.Chains;
import stackside.derive.circuit.Occupant.Integrity;
import stackside.derive.circuit.Occupant.Use;
import stackside.model.Asset;
import stackside.model.EnergyKind;
import stackside.model.Fact;
import stackside.model.Instrument;
import stackside.model.Machine;
import stackside.model.PedalColour;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.model.SelectionKind;
import stackside.model.Settings;
import stackside.model.SingleFault;
import stackside.model.Socket;
import stackside.model.Unit;

/**
 * An approved answer set up correctly in a room on a generator, and every way in which one thing in
 * it can be wrong.
 *
 * @param state as approved
 */
record SetUp(
    Room room,
    Asset asset,
    Profile profile,
    Settings settings,
    Chains chains,
    KnownPrograms programs,
    CircuitState state) {

  /** Sets an answer up; absent if it needs no current or its instrument reaches no socket. */
  static Optional<SetUp> of(
      Unit unit, Room room, Asset asset, Profile profile, KnownPrograms programs) {
    Chains chains = Chains.in(room);
    return profile
        .settings()
        .flatMap(
            settings ->
                approved(unit, room, asset, settings, chains)
                    .map(
                        state ->
                            new SetUp(room, asset, profile, settings, chains, programs, state)));
  }

  private static Optional<CircuitState> approved(
      Unit unit, Room room, Asset asset, Settings settings, Chains chains) {
    Machine machine = asset.machine().value();
    Socket socket = settings.socket().value();
    Instrument instrument = settings.instrument().value();
    return chains
        .shortest(instrument, socket)
        .map(
            chain ->
                new CircuitState(
                    machine,
                    Set.of(),
                    KnownPrograms.approved(settings, Program.Source.APPROVED),
                    selection(machine, socket),
                    SelectedBy.of(machine.selectsSocket().value()),
                    List.of(new Occupant(socket, instrument, chain, Use.IN_HAND, Integrity.WHOLE)),
                    settings.neutralElectrode().map(Fact::value),
                    settings.neutralElectrode().isPresent()
                        ? NeutralState.ON_SKIN
                        : NeutralState.NOT_USED,
                    pedals(unit, room, machine)));
  }

  /** If nothing is ever selected, the kind of the mode decides when a pedal is pressed. */
  private static Optional<Socket> selection(Machine machine, Socket approved) {
    return switch (machine.selectsSocket().value()) {
      case BY_PROGRAM, BY_BUTTON, BY_PLUGGING_IN, BY_FOOT_SWITCH -> Optional.of(approved);
      case FIXED -> Optional.empty();
    };
  }

  private static List<PedalColour> pedals(Unit unit, Room room, Machine machine) {
    List<PedalColour> there = unit.pedalsFor(room, machine);
    return there.isEmpty() ? List.of(PedalColour.values()) : there;
  }

  /** Every way in which a fault can occur here; empty if it cannot. */
  List<Deviation> waysOf(SingleFault fault) {
    return switch (fault) {
      case INSTRUMENT_IN_WRONG_SOCKET -> wrongSockets();
      case SOCKET_NOT_SELECTED -> canStayUnselected() ? List.of(Deviation.of(fault)) : List.of();
      case INSTRUMENT_PLUG_LOOSE -> loosePlugs();
      case INSTRUMENT_CABLE_BROKEN -> List.of(Deviation.interrupted(fault, Integrity.BROKEN));
      case OTHER_INSTRUMENT_LEFT_IN -> instrumentsLeftIn();
      case NEUTRAL_OFF_SKIN, NEUTRAL_PARTLY_OFF, NEUTRAL_CABLE_OUT, NEUTRAL_CABLE_BROKEN ->
          state.neutralElectrode().isPresent() ? List.of(Deviation.of(fault)) : List.of();
      case FOOT_SWITCH_OUT, MAINS_OFF -> List.of(Deviation.of(fault));
      case WRONG_PEDAL -> state.pedals().size() > 1 ? List.of(Deviation.of(fault)) : List.of();
      case WRONG_PROGRAM -> wrongPrograms();
      case ARGON_EMPTY -> usesArgon() ? List.of(Deviation.of(fault)) : List.of();
    };
  }

  private List<Deviation> wrongSockets() {
    return state.machine().sockets().stream()
        .filter(socket -> !isApproved(socket))
        .filter(socket -> chains.shortest(instrument(), socket).isPresent())
        .map(Deviation::wrongSocket)
        .toList();
  }

  /**
   * Whether somebody must press a button to select the socket, and power-on selects another one or
   * is not known to select this one. If a stored program selects it, failing to choose is a wrong
   * program.
   */
  private boolean canStayUnselected() {
    return selects(SelectionKind.BY_BUTTON)
        && state.machine().socketAtPowerOn().filter(this::isApproved).isEmpty();
  }

  private List<Deviation> loosePlugs() {
    SingleFault fault = SingleFault.INSTRUMENT_PLUG_LOOSE;
    return Stream.of(Integrity.LOOSE, Integrity.LOOSE_BUT_SENSED)
        .filter(
            how ->
                how == Integrity.LOOSE
                    || settings.socket().value().noticesPlug()
                    || selects(SelectionKind.BY_PLUGGING_IN))
        .map(how -> Deviation.interrupted(fault, how))
        .toList();
  }

  private List<Deviation> instrumentsLeftIn() {
    List<Deviation> ways = new ArrayList<>();
    for (Socket socket : state.machine().sockets()) {
      for (Fact<Instrument> kept : room.keeps().instruments()) {
        Instrument other = kept.value();
        if (active(socket)
            && !other.id().equals(instrument().id())
            && chains.shortest(other, socket).isPresent()) {
          ways.add(Deviation.leftIn(socket, other));
        }
      }
    }
    return ways;
  }

  private List<Deviation> wrongPrograms() {
    return settings.program().map(program -> program.slot().value()).stream()
        .flatMap(slot -> programs.otherThan(slot).stream())
        .map(Deviation::wrongProgram)
        .toList();
  }

  private boolean usesArgon() {
    return settings.argonFlow().isPresent()
        || settings.assigned().stream()
            .anyMatch(pedal -> pedal.mode().value().kind().value() == EnergyKind.ARGON);
  }

  /** The state including a fault. */
  CircuitState with(Deviation deviation) {
    return switch (deviation.fault()) {
      case INSTRUMENT_IN_WRONG_SOCKET -> inWrongSocket(deviation.socket().orElseThrow());
      case SOCKET_NOT_SELECTED ->
          state.selecting(state.machine().socketAtPowerOn(), SelectedBy.POWER_ON);
      case INSTRUMENT_PLUG_LOOSE, INSTRUMENT_CABLE_BROKEN ->
          interrupted(deviation.integrity().orElseThrow());
      case OTHER_INSTRUMENT_LEFT_IN ->
          leftIn(deviation.socket().orElseThrow(), deviation.other().orElseThrow());
      case NEUTRAL_OFF_SKIN -> state.with(NeutralState.OFF_SKIN);
      case NEUTRAL_PARTLY_OFF -> state.with(NeutralState.PARTLY_OFF);
      case NEUTRAL_CABLE_OUT -> state.with(NeutralState.CABLE_OUT);
      case NEUTRAL_CABLE_BROKEN -> state.with(NeutralState.CABLE_BROKEN);
      case FOOT_SWITCH_OUT -> state.without(Supply.FOOT_SWITCH);
      case WRONG_PEDAL -> state;
      case WRONG_PROGRAM -> inProgram(deviation.program().orElseThrow());
      case ARGON_EMPTY -> state.without(Supply.ARGON);
      case MAINS_OFF -> state.without(Supply.MAINS);
    };
  }

  /** A plug in the socket of the neutral electrode or the foot switch has displaced that one. */
  private CircuitState inWrongSocket(Socket wrong) {
    Occupant moved = occupant(instrument(), wrong, Use.IN_HAND);
    CircuitState there = state.holding(active(wrong) ? List.of(moved) : List.of());
    return switch (wrong.kind().value()) {
      case MONOPOLAR, BIPOLAR, ARGON ->
          selects(SelectionKind.BY_PLUGGING_IN) ? plugged(there, wrong) : there;
      case NEUTRAL -> unplugged(there.with(NeutralState.CABLE_OUT));
      case FOOT_SWITCH -> unplugged(there.without(Supply.FOOT_SWITCH));
    };
  }

  private CircuitState interrupted(Integrity how) {
    Occupant own = state.inHand().orElseThrow();
    Occupant now = new Occupant(own.socket(), own.instrument(), own.chain(), own.use(), how);
    CircuitState there = state.holding(List.of(now));
    return how.sensed() ? there : unplugged(there);
  }

  /**
   * In the approved socket, the other instrument takes the place of the right one. In any other
   * socket, both are plugged in. If plugging in selects, the other instrument is assumed to have
   * been plugged in last, as after a change of instrument and back.
   */
  private CircuitState leftIn(Socket socket, Instrument other) {
    Occupant left = occupant(other, socket, Use.LEFT_IN);
    if (isApproved(socket)) {
      return state.holding(List.of(left));
    }
    CircuitState both = state.adding(left);
    return selects(SelectionKind.BY_PLUGGING_IN) ? plugged(both, socket) : both;
  }

  /**
   * A plug went in on a machine that selects by plugging in: that socket is live, with its own
   * program.
   */
  private CircuitState plugged(CircuitState there, Socket socket) {
    Program program =
        socket
            .programOnPlugging()
            .map(slot -> programs.inSlot(slot.value()))
            .orElseGet(() -> Program.unknown(Optional.empty()));
    return there.selecting(Optional.of(socket), SelectedBy.PLUG).with(program);
  }

  /** No plug is sensed any more. If plugging in selects, the selection falls back. */
  private CircuitState unplugged(CircuitState there) {
    return selects(SelectionKind.BY_PLUGGING_IN)
        ? there.selecting(state.machine().socketAtPowerOn(), SelectedBy.POWER_ON)
        : there;
  }

  /** If programs select, a program selects its own socket; otherwise the selection stays. */
  private CircuitState inProgram(Program program) {
    CircuitState there = state.with(program);
    if (!selects(SelectionKind.BY_PROGRAM) || program.socket().isEmpty()) {
      return there;
    }
    return there.selecting(program.socket(), SelectedBy.PROGRAM);
  }

  private Occupant occupant(Instrument instrument, Socket socket, Use use) {
    Chain chain = chains.shortest(instrument, socket).orElseThrow();
    return new Occupant(socket, instrument, chain, use, Integrity.WHOLE);
  }

  private Instrument instrument() {
    return settings.instrument().value();
  }

  private boolean isApproved(Socket socket) {
    return socket.id().equals(settings.socket().value().id());
  }

  private boolean selects(SelectionKind kind) {
    return state.machine().selectsSocket().value() == kind;
  }

  private static boolean active(Socket socket) {
    return switch (socket.kind().value()) {
      case MONOPOLAR, BIPOLAR, ARGON -> true;
      case NEUTRAL, FOOT_SWITCH -> false;
    };
  }

  /** The pedals that the profile uses, yellow first. */
  List<PedalColour> assigned() {
    return Stream.of(PedalColour.values())
        .filter(settings::presses)
        .sorted(Comparator.naturalOrder())
        .toList();
  }
}
