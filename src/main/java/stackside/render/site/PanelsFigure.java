package stackside.render.site;

import java.util.List;
import java.util.stream.Collectors;
import stackside.model.Machine;
import stackside.model.Socket;
import stackside.render.Sheet;
import stackside.render.SocketMap;
import stackside.render.SvgWriter;
import stackside.render.site.Part.Grid;

/** Front panels compared, and how each machine selects its live socket. */
final class PanelsFigure {
  private PanelsFigure() {}

  static List<Part> parts(List<Machine> machines, String id, PageContext here) {
    return machines.isEmpty()
        ? List.of()
        : List.of(
            new Part.Sides(machines.stream().map(machine -> side(machine, id, here)).toList()),
            table(machines, here));
  }

  private static Part.Side side(Machine machine, String id, PageContext here) {
    return new Part.Side(
        here.link(machine),
        new Html(
            SvgWriter.svg(
                SocketMap.of(here.site().panel(machine), Sheet.PHONE),
                id + "-" + machine.id().slug())));
  }

  private static Grid table(List<Machine> machines, PageContext here) {
    return new Grid(
        here.say("figure.panels.table"),
        List.of(
            here.say("kind.machine"),
            here.say("figure.panels.selects"),
            here.say("figure.panels.sockets"),
            here.say("figure.panels.senses")),
        machines.stream().map(machine -> row(machine, here)).toList());
  }

  private static Grid.GridRow row(Machine machine, PageContext here) {
    return Grid.GridRow.of(
        here.link(machine),
        RichLine.of(here.say("selects." + machine.selectsSocket().value().word())),
        RichLine.of(listed(machine.sockets())),
        RichLine.of(noticing(machine, here)));
  }

  /** The sockets at which the machine detects that nothing is plugged in. */
  private static String noticing(Machine machine, PageContext here) {
    List<Socket> noticing = machine.sockets().stream().filter(Socket::noticesPlug).toList();
    if (noticing.isEmpty()) {
      return here.say("figure.panels.none");
    }
    return noticing.size() == machine.sockets().size()
        ? here.say("figure.panels.all")
        : listed(noticing);
  }

  private static String listed(List<Socket> sockets) {
    return sockets.stream().map(Socket::title).collect(Collectors.joining(", "));
  }
}
