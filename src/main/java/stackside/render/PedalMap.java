package stackside.render;

import java.util.stream.Collectors;
import stackside.model.PedalColour;
import stackside.render.PedalPlan.Place;
import stackside.render.Shape.Paint;
import stackside.render.Shape.Weight;

/**
 * Draws a foot switch from above, as seen by the person standing at it. Each pedal has its side
 * above it, its colour outlined in ink, the word for the colour, its function and its setting.
 */
public final class PedalMap {
  private final PedalPlan plan;
  private final Pen pen;
  private final double width;

  private PedalMap(PedalPlan plan, Sheet sheet) {
    this.plan = plan;
    this.pen = new Pen(sheet.text());
    this.width = sheet.width();
  }

  public static Drawing of(PedalPlan plan, Sheet sheet) {
    PedalMap map = new PedalMap(plan, sheet);
    return map.draw(map.caption());
  }

  /** The pedals for a card, without a caption. */
  public static Drawing bare(PedalPlan plan, Sheet sheet) {
    PedalMap map = new PedalMap(plan, sheet);
    return map.draw(map.pen.thick() / 2);
  }

  private double caption() {
    String caption = plan.words().say("pedals.seen", plan.footSwitch().title());
    return pen.block(0, pen.thin(), width, caption, Weight.REGULAR, Ink.INK);
  }

  private Drawing draw(double top) {
    double gap = 0.8 * pen.text();
    int count = plan.pedals().size();
    double pad = 0.45 * pen.text();
    double each = Math.min((width - 2 * pad - (count - 1) * gap) / count, 22 * pen.text());
    int plate = pen.here();
    double x = pad;
    double height =
        plan.pedals().stream().mapToDouble(place -> height(place, each)).max().orElse(0);
    for (Place place : plan.pedals()) {
      pedal(place, x, top + pad, each, height);
      x += each + gap;
    }
    double end = top + height + 2 * pad;
    double line = pen.thick() / 2;
    pen.addAt(
        plate,
        new Shape.Rect(
            line,
            top,
            x - gap + pad - 2 * line,
            end - top,
            0.9 * pen.text(),
            Paint.both(pen.heavy(Ink.INK), Ink.PAPER)));
    return new Drawing(
        plan.words().say("pedals.caption", plan.footSwitch().title()),
        plan.pedals().stream().map(this::sentence).collect(Collectors.joining(" ")),
        width,
        end + pen.thick(),
        pen.shapes());
  }

  private double height(Place place, double room) {
    Pen trial = new Pen(pen.text());
    return new PedalMap(plan, new Sheet(width, pen.text())).words(trial, place, 0, 0, room)
        + 0.4 * pen.text();
  }

  private void pedal(Place place, double x, double y, double width, double height) {
    double line = pen.thin();
    pen.add(
        new Shape.Rect(
            x, y, width, height, 0.5 * pen.text(), Paint.both(pen.line(Ink.INK), Ink.PAPER)));
    pen.add(
        new Shape.Rect(
            x + line * 4,
            y + line * 4,
            width - line * 8,
            swatch() - line * 4,
            0.3 * pen.text(),
            Paint.both(pen.heavy(Ink.INK), fill(place.colour()))));
    words(pen, place, x, y, width);
  }

  private double swatch() {
    return 1.5 * pen.text();
  }

  /** Draws the words on a pedal; returns where they end. */
  private double words(Pen pen, Place place, double x, double top, double width) {
    double left = x + 0.4 * pen.text();
    double room = width - 0.8 * pen.text();
    double y = top + swatch() + 0.5 * pen.text();
    y =
        pen.block(
            left,
            y,
            room,
            place.side() + ": " + plan.words().choice(place.colour()),
            Weight.REGULAR,
            Ink.INK);
    y =
        pen.block(
            left, y, room, capitalised(plan.words().choice(place.action())), Weight.BOLD, Ink.INK);
    if (place.forbidden()) {
      double cross = cross(pen, left, y);
      return pen.block(
          left + cross, y, room - cross, String.join(", ", place.set()), Weight.BOLD, Ink.INK);
    }
    for (String line : place.set()) {
      y = pen.block(left, y, room, line, Weight.REGULAR, Ink.INK);
    }
    return y;
  }

  /** Draws a card's sign for what must not be pressed; returns the width that it takes. */
  private static double cross(Pen pen, double left, double top) {
    double high = pen.capital();
    Shape.Stroke stroke = pen.heavy(Ink.INK);
    pen.add(Shape.Polyline.line(left, top, left + high, top + high, stroke));
    pen.add(Shape.Polyline.line(left, top + high, left + high, top, stroke));
    return 1.6 * high;
  }

  private static Ink fill(PedalColour colour) {
    return switch (colour) {
      case YELLOW -> Ink.YELLOW;
      case BLUE -> Ink.BLUE;
    };
  }

  private static String capitalised(String words) {
    return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
  }

  private String sentence(Place place) {
    String set = place.set().isEmpty() ? "" : ": " + String.join(", ", place.set());
    return place.side()
        + ", "
        + plan.words().choice(place.colour())
        + ", "
        + plan.words().choice(place.action())
        + set
        + ".";
  }
}
