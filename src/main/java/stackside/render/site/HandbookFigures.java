package stackside.render.site;

import stackside.model.Machine;
import stackside.model.Prose;
import stackside.model.Thing;
import stackside.render.PanelPlans;
import stackside.render.Sheet;
import stackside.render.SocketMap;
import stackside.render.SvgWriter;

/** Draws what a handbook page asks for by name. */
final class HandbookFigures {

  private HandbookFigures() {}

  static Html draw(Prose.Figure figure, Here here) {
    StringBuilder out = new StringBuilder();
    figure.about().stream()
        .flatMap(fact -> here.site().find(fact.value()).stream())
        .forEach(thing -> out.append(draw(thing, here)));
    return new Html(out.toString());
  }

  private static String draw(Thing thing, Here here) {
    if (thing instanceof Machine machine) {
      return "<figure class=\"drawn\">"
          + SvgWriter.svg(
              SocketMap.of(PanelPlans.of(here.site().analysis(), machine), Sheet.PHONE),
              "figure-" + machine.id().slug())
          + "</figure>\n";
    }
    return "";
  }
}
