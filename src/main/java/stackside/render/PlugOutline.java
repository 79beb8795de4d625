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
 * The outline of a plug from the centres of its pins: filled where it is plugged in, dashed where
 * it fits and must not go, grey where nothing goes. What a socket is for shows in the outline, in
 * colour and in grey: that of a neutral electrode is a sheet with a cut corner and flat blades,
 * that of argon a ring about its gas way, any other a bar with round pins.
 *
 * @param width at life size, in millimetres
 * @param height at life size, in millimetres
 */
record PlugOutline(
    SocketKind kind, List<Pin> pins, double width, double height, double midX, double midY) {
  /** Room round the pins at life size. */
  private static final double BODY = 4.5;

  private static final double PIN = 1.6;

  static PlugOutline of(Place place) {
    List<Pin> pins =
        place.plug().map(Plug::shape).map(shape -> shape.value().pins()).orElse(NO_SHAPE);
    double left = pins.stream().mapToDouble(Pin::x).min().orElse(0);
    double right = pins.stream().mapToDouble(Pin::x).max().orElse(0);
    double top = pins.stream().mapToDouble(Pin::y).min().orElse(0);
    double bottom = pins.stream().mapToDouble(Pin::y).max().orElse(0);
    SocketKind kind = place.socket().kind().value();
    double wide = right - left + 2 * BODY;
    double high = bottom - top + 2 * BODY;
    double round = Math.max(wide, high);
    return new PlugOutline(
        kind,
        pins,
        kind == SocketKind.ARGON ? round : wide,
        kind == SocketKind.ARGON ? round : high,
        (left + right) / 2,
        (top + bottom) / 2);
  }

  /** Stands in where the machine does not describe the plug: a single hole. */
  private static final List<Pin> NO_SHAPE = List.of(new Pin(0, 0));

  /** Draws it with its middle at a place. */
  void draw(Pen pen, double x, double y, double scale, Use use) {
    double line = Math.min(pen.thick(), Math.min(width, height) * scale * 0.1);
    Paint body = body(use, line);
    Paint hole = hole(use, Math.min(pen.thin(), line));
    pen.add(body(x, y, scale, body));
    if (kind == SocketKind.ARGON) {
      pen.add(new Shape.Circle(x, y, 0.3 * width * scale, hole));
      pen.add(new Shape.Circle(x, y, 0.14 * width * scale, use == Use.USED ? body : hole));
      return;
    }
    for (Pin pin : pins) {
      pen.add(pin(x + (pin.x() - midX) * scale, y + (pin.y() - midY) * scale, scale, hole));
    }
  }

  private Shape body(double x, double y, double scale, Paint paint) {
    double wide = width * scale;
    double high = height * scale;
    return switch (kind) {
      case ARGON -> new Shape.Circle(x, y, wide / 2, paint);
      case NEUTRAL -> sheet(x - wide / 2, y - high / 2, wide, high, BODY * scale, paint);
      case MONOPOLAR, BIPOLAR, FOOT_SWITCH ->
          new Shape.Rect(x - wide / 2, y - high / 2, wide, high, BODY * scale, paint);
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

  private Shape pin(double x, double y, double scale, Paint paint) {
    double size = PIN * scale;
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
