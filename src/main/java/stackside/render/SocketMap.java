package stackside.render;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import stackside.render.PanelFront.Exit;
import stackside.render.PanelFront.Wording;
import stackside.render.PanelPlan.Misfit;
import stackside.render.PanelPlan.Place;
import stackside.render.PanelPlan.Use;
import stackside.render.Shape.Weight;

/**
 * Draws the front panel of a machine: the sockets in their real order with the outlines of their
 * plugs, each under the label printed on the machine. A cable leads from every socket in use to the
 * name of what goes in, and words say what would happen if a plug went into another socket that it
 * fits. The framed label is the callout, so that no second numbering can contradict the machine's.
 */
public final class SocketMap {
  private static final double PANEL_SHARE = 0.6;

  /** From this width in em, names and remarks go side by side below the panel. */
  private static final double TWO_COLUMNS = 32;

  private final PanelPlan plan;
  private final Pen pen;
  private final double width;

  private SocketMap(PanelPlan plan, Sheet sheet) {
    this.plan = plan;
    this.pen = new Pen(sheet.text());
    this.width = sheet.width();
  }

  /** Draws the panel with its cables and words. */
  public static Drawing of(PanelPlan plan, Sheet sheet) {
    return new SocketMap(plan, sheet).draw();
  }

  /** Draws the panel alone, for a list of panels: labels and plugs, no other words. */
  public static Drawing thumbnail(PanelPlan plan, double width) {
    SocketMap map = new SocketMap(plan, new Sheet(width, width / 16));
    double end = map.front(width, Wording.ELSEWHERE).draw(0, map.pen.thick(), new ArrayList<>());
    return map.drawing(end);
  }

  private Drawing draw() {
    double top = caption();
    boolean used = plan.places().stream().anyMatch(place -> place.use() == Use.USED);
    if (used && PanelFront.holdsWords(plan.places(), pen, PANEL_SHARE * width)) {
      return drawing(beside(top));
    }
    boolean inside = PanelFront.holdsWords(plan.places(), pen, width);
    List<Exit> exits = new ArrayList<>();
    double panel = front(width, inside ? Wording.INSIDE : Wording.ELSEWHERE).draw(0, top, exits);
    boolean twoColumns = !inside && used && width > TWO_COLUMNS * pen.text();
    double names =
        used ? new CableRuns(exits, pen).below(panel, twoColumns ? width / 2 : width) : panel;
    if (inside) {
      return drawing(names);
    }
    if (twoColumns) {
      double first = panel + 0.8 * pen.text() + exits.size() * CableRuns.lane(pen);
      return drawing(Math.max(names, entries(width / 2 + pen.text(), first)));
    }
    return drawing(entries(pen.thin(), names + pen.text()));
  }

  private double beside(double top) {
    double panel = PANEL_SHARE * width;
    List<Exit> exits = new ArrayList<>();
    double end = front(panel, Wording.INSIDE).draw(0, top, exits);
    return new CableRuns(exits, pen).beside(top, end, panel, width);
  }

  private PanelFront front(double width, Wording wording) {
    return new PanelFront(plan.places(), plan.outlined(), pen, width, wording);
  }

  private Drawing drawing(double end) {
    return new Drawing(
        plan.words().say("panel.title", plan.machine().title()),
        plan.places().stream().map(this::sentence).collect(Collectors.joining(" ")),
        width,
        end + pen.thick(),
        pen.shapes());
  }

  private double caption() {
    double base = pen.capital() + pen.thin();
    pen.words(
        0, base, plan.words().say("panel.seen", plan.machine().title()), Weight.REGULAR, Ink.INK);
    return base + 0.55 * pen.text();
  }

  /** Draws the words that the panel itself has no room for. */
  private double entries(double left, double top) {
    double y = top;
    for (Place place : plan.places()) {
      if (place.use() != Use.USED || !place.misfits().isEmpty()) {
        y = entry(place, left, y) + 0.6 * pen.text();
      }
    }
    return y - 0.6 * pen.text();
  }

  private double entry(Place place, double left, double top) {
    PanelFront.label(place, pen, left, top);
    double x = left + pen.pillWidth(place.label()) + 0.5 * pen.text();
    double y = top + (pen.pillHeight() - pen.capital()) / 2;
    if (place.misfits().isEmpty()) {
      y =
          pen.block(
              x,
              y,
              width - x,
              plan.words().say("panel.name-unused", place.name()),
              Weight.REGULAR,
              Ink.GREY);
    }
    for (Misfit misfit : place.misfits()) {
      y = MisfitNote.draw(misfit, pen, x, y, width - x);
    }
    return Math.max(top + pen.pillHeight(), y - pen.pitch() + pen.text());
  }

  // For people who cannot see it

  private String sentence(Place place) {
    Words words = plan.words();
    String says =
        switch (place.use()) {
          case USED -> leads(place) + ".";
          case ALSO_FITS -> words.say("panel.nothing");
          case UNUSED -> words.say("panel.unused-sentence");
        };
    String misfits =
        place.misfits().stream()
            .map(misfit -> " " + misfit.what() + ": " + misfit.outcome() + ".")
            .collect(Collectors.joining());
    return words.say(
            "panel.socket",
            place.label(),
            place.name(),
            new Spans(words).text(place.socket().place().value()),
            says)
        + misfits
        + (plan.outlined().contains(place) ? " " + words.say("panel.differs") : "");
  }

  private static String leads(Place place) {
    return place.leads().stream()
        .map(lead -> lead.name() + lead.through().map(way -> ", " + way).orElse(""))
        .collect(Collectors.joining("; "));
  }
}
