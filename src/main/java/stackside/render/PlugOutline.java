package stackside.render;

import java.util.List;
import stackside.model.PinShape.Pin;
import stackside.model.Plug;
import stackside.model.SocketKind;
import stackside.render.PanelPlan.Place;
import stackside.render.PanelPlan.Use;
import stackside.render.Shape.Paint;
import stackside.render.Shape.Stroke;

/**
 * The outline of a plug, derived from the centres of its pins: filled if it is plugged in, dashed
 * if it fits but must not go in, grey if nothing goes in. The outline also shows what the socket is
 * for, with or without colour: a sheet with a cut corner and flat blades for a neutral electrode, a
 * ring around the gas channel for argon, a bar with round pins for anything else. The distances
 * between pins are to scale. The pins and the body around them are never too small to make out.
 *
 * @param wide distance from the first pin to the last at life size, in millimetres, across
 * @param high the same, downwards
 * @param closest distance between neighbouring pins at life size
 */
record PlugOutline(
    SocketKind kind,
    List<Pin> pins,
    double wide,
    double high,
    double midX,
    double midY,
    double closest) {
  /** Space around the pins at life size. */
  private static final double BODY = 4.5;

  private static final double PIN = 1.6;

  /** The least space around the pins, in em of the words beside the plug. */
  private static final double LEAST_BODY = 0.45;

  private static final double LEAST_PIN = 0.17;

  /** The largest share of the distance between two pins that a pin may take up. */
  private static final double MOST_OF_WAY = 0.35;

  static PlugOutline of(Place place) {
    List<Pin> pins =
        place.plug().map(Plug::shape).map(shape -> shape.value().pins()).orElse(NO_SHAPE);
    double left = pins.stream().mapToDouble(Pin::x).min().orElse(0);
    double right = pins.stream().mapToDouble(Pin::x).max().orElse(0);
    double top = pins.stream().mapToDouble(Pin::y).min().orElse(0);
    double bottom = pins.stream().mapToDouble(Pin::y).max().orElse(0);
    SocketKind kind = place.socket().kind().value();
    double round = kind == SocketKind.ARGON ? Math.max(right - left, bottom - top) : 0;
    return new PlugOutline(
        kind,
        pins,
        Math.max(right - left, round),
        Math.max(bottom - top, round),
        (left + right) / 2,
        (top + bottom) / 2,
        closest(pins));
  }

  private static double closest(List<Pin> pins) {
    double closest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < pins.size(); i++) {
      for (Pin other : pins.subList(i + 1, pins.size())) {
        Pin pin = pins.get(i);
        closest = Math.min(closest, Math.hypot(pin.x() - other.x(), pin.y() - other.y()));
      }
    }
    return closest;
  }

  /** Used if the machine does not describe the plug: a single hole. */
  private static final List<Pin> NO_SHAPE = List.of(new Pin(0, 0));

  /** The largest scale at which it fits into a space; at most life size. */
  double largest(double width, double height, Pen pen) {
    return Math.min(1, Math.min(largestOver(wide, width, pen), largestOver(high, height, pen)));
  }

  private static double largestOver(double span, double room, Pen pen) {
    double least = Math.max(0, room - 2 * LEAST_BODY * pen.text());
    return Math.min(room / (span + 2 * BODY), span == 0 ? 1 : least / span);
  }

  double width(double scale, Pen pen) {
    return wide * scale + 2 * body(scale, pen);
  }

  double height(double scale, Pen pen) {
    return high * scale + 2 * body(scale, pen);
  }

  private static double body(double scale, Pen pen) {
    return Math.max(BODY * scale, LEAST_BODY * pen.text());
  }

  /** Draws it centred at a point. */
  void draw(Pen pen, double x, double y, double scale, Use use) {
    double width = width(scale, pen);
    double height = height(scale, pen);
    double line = Math.min(pen.thick(), Math.min(width, height) * 0.1);
    Paint body = body(use, line);
    Paint hole = hole(use, Math.min(pen.thin(), line));
    pen.add(body(x, y, width, height, body(scale, pen), body));
    if (kind == SocketKind.ARGON) {
      pen.add(new Shape.Circle(x, y, 0.3 * width, hole));
      pen.add(new Shape.Circle(x, y, 0.14 * width, use == Use.USED ? body : hole));
      return;
    }
    double size =
        Math.max(PIN * scale, Math.min(LEAST_PIN * pen.text(), MOST_OF_WAY * closest * scale));
    for (Pin pin : pins) {
      pen.add(pin(x + (pin.x() - midX) * scale, y + (pin.y() - midY) * scale, size, hole));
    }
  }

  private Shape body(double x, double y, double wide, double high, double round, Paint paint) {
    return switch (kind) {
      case ARGON -> new Shape.Circle(x, y, wide / 2, paint);
      case NEUTRAL -> sheet(x - wide / 2, y - high / 2, wide, high, round, paint);
      case MONOPOLAR, BIPOLAR, FOOT_SWITCH ->
          new Shape.Rect(x - wide / 2, y - high / 2, wide, high, round, paint);
    };
  }

  /** A sheet with its upper right corner cut off. */
  private static Shape sheet(
      double left, double top, double wide, double high, double cut, Paint paint) {
    double right = left + wide;
    return new Shape.Polygon(
        List.of(
            new Shape.Point(left, top),
            new Shape.Point(right - cut, top),
            new Shape.Point(right, top + cut),
            new Shape.Point(right, top + high),
            new Shape.Point(left, top + high)),
        paint);
  }

  private Shape pin(double x, double y, double size, Paint paint) {
    return kind == SocketKind.NEUTRAL
        ? new Shape.Rect(x - 1.4 * size, y - 0.7 * size, 2.8 * size, 1.4 * size, 0, paint)
        : new Shape.Circle(x, y, size, paint);
  }

  private static Paint body(Use use, double line) {
    return switch (use) {
      case USED -> Paint.fill(Ink.INK);
      case ALSO_FITS -> Paint.both(Stroke.dashed(Ink.INK, line), Ink.PAPER);
      case UNUSED -> Paint.both(Stroke.of(Ink.GREY, line * 0.6), Ink.PAPER);
    };
  }

  private static Paint hole(Use use, double line) {
    return switch (use) {
      case USED -> Paint.fill(Ink.PAPER);
      case ALSO_FITS -> Paint.outline(Stroke.of(Ink.INK, line));
      case UNUSED -> Paint.outline(Stroke.of(Ink.GREY, line));
    };
  }
}
