package stackside.model;

import java.util.List;
import java.util.Optional;
import stackside.source.Location;

/**
 * One socket on a machine's front panel.
 *
 * @param label exactly as printed on the machine
 * @param takes the plugs that fit
 * @param sensesPlug absent counts as no
 * @param programOnPlugging on a machine that selects by plugging in: the stored program that a plug
 *     in this socket loads
 */
public record Socket(
    Location at,
    ThingId id,
    Fact<String> label,
    Fact<String> name,
    Fact<PanelPlace> place,
    Fact<SocketKind> kind,
    List<Fact<ConnectorId>> takes,
    Optional<Fact<Boolean>> sensesPlug,
    Optional<Fact<Integer>> programOnPlugging)
    implements Thing {
  public Socket {
    takes = List.copyOf(takes);
  }

  @Override
  public String title() {
    return name.value() + " " + label.value();
  }

  /** Whether a plug of this form fits. */
  public boolean takes(ConnectorId plug) {
    return takes.stream().anyMatch(taken -> taken.value().equals(plug));
  }

  /** Whether the machine detects that the socket is empty. */
  public boolean noticesPlug() {
    return sensesPlug.map(Fact::value).orElse(false);
  }

  /** Hashes the id only; the full record is slow. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
