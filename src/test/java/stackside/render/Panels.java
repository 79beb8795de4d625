package stackside.render;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.model.ConnectorId;
import stackside.model.Fact;
import stackside.model.Kind;
import stackside.model.Machine;
import stackside.model.MonitorKind;
import stackside.model.PanelPlace;
import stackside.model.PinShape;
import stackside.model.Plug;
import stackside.model.SelectionKind;
import stackside.model.Socket;
import stackside.model.SocketKind;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.quantity.LoadRange;
import stackside.render.PanelPlan.Lead;
import stackside.render.PanelPlan.Misfit;
import stackside.render.PanelPlan.Place;
import stackside.source.Location;

/** Front panels for tests, built in code and entirely invented. */
final class Panels {
  static final Location AT = Location.startOf("machines/x.yaml");

  static final Words WORDS = Words.in("en-GB");

  private Panels() {}

  /** A draft of a unit, for plans that need one. */
  static Publication publication(Unit unit) {
    return new Publication(
        Analysis.of(unit), List.of(), List.of(), Marking.DRAFT, LocalDate.of(2026, 11, 25));
  }

  static <T> Fact<T> fact(T value) {
    return new Fact<>(value, AT);
  }

  static Plug plug(String id, double... centres) {
    List<PinShape.Pin> pins = new ArrayList<>();
    for (int i = 0; i < centres.length; i += 2) {
      pins.add(new PinShape.Pin(centres[i], centres[i + 1]));
    }
    return new Plug(AT, new ConnectorId(id), fact(id), fact(new PinShape(pins)));
  }

  static Socket socket(String id, String label, String name, int row, int column) {
    return new Socket(
        AT,
        new ThingId(Kind.SOCKET, "m/" + id),
        fact(label),
        fact(name),
        fact(new PanelPlace(row, column)),
        fact(SocketKind.MONOPOLAR),
        List.of(fact(new ConnectorId("three"))),
        Optional.empty(),
        Optional.empty());
  }

  static Machine machine(Socket... sockets) {
    return new Machine(
        AT,
        new ThingId(Kind.MACHINE, "m"),
        fact("Tern"),
        List.of(),
        fact(LoadRange.parse("50 ohm to 2000 ohm")),
        fact(MonitorKind.CONTINUITY),
        List.of(),
        List.of(plug("three", 0, 0, 11, 0, 22, 0)),
        List.of(sockets),
        fact(SelectionKind.BY_PROGRAM),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of(),
        Map.of());
  }

  static Place used(Socket socket, String name) {
    return new Place(
        socket,
        Optional.of(plug("three", 0, 0, 11, 0, 22, 0)),
        List.of(new Lead(name, name, Optional.empty())),
        List.of());
  }

  static Place alsoFits(Socket socket, String what, String outcome) {
    return new Place(
        socket,
        Optional.of(plug("three", 0, 0, 11, 0, 22, 0)),
        List.of(),
        List.of(new Misfit(what, outcome, Mark.DIAMOND)));
  }

  static Place unused(Socket socket) {
    return new Place(socket, Optional.of(plug("three", 0, 0, 11, 0, 22, 0)), List.of(), List.of());
  }
}
