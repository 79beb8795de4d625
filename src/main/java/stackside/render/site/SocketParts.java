package stackside.render.site;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.model.FootSwitch;
import stackside.model.Settings;
import stackside.render.PanelPlan;
import stackside.render.PanelPlan.Place;
import stackside.render.PedalMap;
import stackside.render.PedalPlan;
import stackside.render.Sheet;
import stackside.render.SocketMap;
import stackside.render.site.Part.Grid;

/** Front panels and pedals as figures, each with a table of the same facts. */
final class SocketParts {

  private SocketParts() {}

  static Part.Figure panel(PanelPlan plan, String id, PageContext here) {
    return here.figure(
        id,
        SocketMap.of(plan, Sheet.PAGE),
        SocketMap.of(plan, Sheet.PHONE),
        Optional.of(table(plan, here)));
  }

  /** The same facts as in the drawing. */
  static Grid table(PanelPlan plan, PageContext here) {
    return new Grid(
        here.say("sockets.caption", plan.machine().title()),
        List.of(
            here.say("sockets.label"),
            here.say("sockets.name"),
            here.say("sockets.place"),
            here.say("sockets.in"),
            here.say("sockets.also")),
        plan.places().stream().map(place -> row(place, here)).toList());
  }

  private static Grid.GridRow row(Place place, PageContext here) {
    return Grid.GridRow.of(
        RichLine.of(TextPiece.shown(place.label())),
        here.link(place.socket(), place.name()),
        RichLine.of(here.spans().text(place.socket().place().value())),
        leads(place, here),
        misfits(place, here));
  }

  private static RichLine leads(Place place, PageContext here) {
    List<RichLine> lines =
        place.leads().stream()
            .map(lead -> RichLine.of(lead.name() + lead.through().map(way -> ", " + way).orElse("")))
            .toList();
    return lines.isEmpty() ? RichLine.of(here.say("sockets.nothing")) : RichLine.joined(lines, "; ");
  }

  private static RichLine misfits(Place place, PageContext here) {
    List<RichLine> lines =
        place.misfits().stream()
            .flatMap(
                misfit ->
                    Stream.of(
                        RichLine.of(misfit.what() + ": ")
                            .then(PageContext.status(misfit.mark(), misfit.outcome()))))
            .toList();
    return lines.isEmpty() ? RichLine.of(here.say("sockets.no-misfit")) : RichLine.joined(lines, "; ");
  }

  static Part.Figure pedals(PedalPlan plan, String id, PageContext here) {
    return here.figure(
        id,
        PedalMap.of(plan, Sheet.PAGE),
        PedalMap.of(plan, Sheet.PHONE),
        Optional.of(pedalTable(plan, here)));
  }

  static Part.Figure pedals(FootSwitch footSwitch, Settings settings, String id, PageContext here) {
    return pedals(PedalPlan.of(footSwitch, settings, here.words()), id, here);
  }

  private static Grid pedalTable(PedalPlan plan, PageContext here) {
    return new Grid(
        here.say("pedals.caption", plan.footSwitch().title()),
        List.of(
            here.say("pedals.side"),
            here.say("pedals.colour"),
            here.say("pedals.does"),
            here.say("pedals.set")),
        plan.pedals().stream()
            .map(
                place ->
                    Grid.GridRow.of(
                        RichLine.of(place.side()),
                        RichLine.of(here.choice(place.colour())),
                        RichLine.of(here.choice(place.action())),
                        RichLine.of(
                            place.set().isEmpty()
                                ? here.say("pedals.by-answer")
                                : String.join(", ", place.set()))))
            .toList());
  }
}
