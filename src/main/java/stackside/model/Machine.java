package stackside.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stackside.quantity.LoadRange;
import stackside.source.Location;

/**
 * A generator model.
 *
 * @param software the versions that this description applies to
 * @param loadRange the loads for which output is published
 * @param footSwitches those that can be connected to the machine
 */
public record Machine(
    Location at,
    ThingId id,
    Fact<String> name,
    @AtLeastOne List<Fact<String>> software,
    Fact<LoadRange> loadRange,
    Fact<MonitorKind> monitor,
    List<Fact<FootSwitch>> footSwitches,
    List<Plug> plugs,
    @AtLeastOne List<Socket> sockets,
    Fact<SelectionKind> selectsSocket,
    Optional<Fact<Socket>> atPowerOn,
    Optional<Fact<SlotRange>> programs,
    @AtLeastOne List<Mode> modes,
    List<Lamp> lamps,
    Map<Condition, Response> answers)
    implements Thing {
  public Machine {
    software = List.copyOf(software);
    footSwitches = List.copyOf(footSwitches);
    plugs = List.copyOf(plugs);
    sockets = List.copyOf(sockets);
    modes = List.copyOf(modes);
    lamps = List.copyOf(lamps);
    answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers));
  }

  @Override
  public String title() {
    return name.value();
  }

  /** The socket that is selected at power-on. */
  public Optional<Socket> socketAtPowerOn() {
    return atPowerOn.map(Fact::value);
  }

  /** Whether the machine's monitor, sockets and modes make this condition possible. */
  public boolean mayMeet(Condition condition) {
    return switch (condition) {
      case INSTRUMENT_CIRCUIT_OPEN, FOOT_SWITCH_MISSING, MAINS_OFF -> true;
      case SELECTED_SOCKET_EMPTY -> sockets.stream().anyMatch(Socket::noticesPlug);
      case NEUTRAL_CIRCUIT_OPEN -> monitor.value() != MonitorKind.NONE;
      case NEUTRAL_CONTACT_POOR -> monitor.value() == MonitorKind.CONTACT_QUALITY;
      case ARGON_EMPTY -> modes.stream().anyMatch(it -> it.kind().value() == EnergyKind.ARGON);
    };
  }

  /**
   * How it answers a condition; absent where nothing is described. Without mains it is silent and
   * gives no output, whether or not its description says so.
   */
  public Optional<Response> answer(Condition condition) {
    Optional<Response> described = Optional.ofNullable(answers.get(condition));
    return condition == Condition.MAINS_OFF ? described.map(Response::withoutPower) : described;
  }

  public boolean hasSocket(SocketKind kind) {
    return sockets.stream().anyMatch(socket -> socket.kind().value() == kind);
  }

  /** The drawing of a plug, if this machine takes it. */
  public Optional<Plug> plug(ConnectorId id) {
    return plugs.stream().filter(plug -> plug.id().equals(id)).findFirst();
  }

  public Optional<Lamp> lamp(LampId id) {
    return lamps.stream().filter(lamp -> lamp.id().equals(id)).findFirst();
  }

  /** The name of a lamp as on the machine; one that it does not have goes by its id. */
  public String lampName(LampId id) {
    return lamp(id).map(lamp -> lamp.name().value()).orElse(id.slug().replace('-', ' '));
  }

  /** Hashes the id only; the full record is slow. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
