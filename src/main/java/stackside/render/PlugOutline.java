package stackside.render;

import java.util.List;
import stackside.model.PinShape.Pin;
import stackside.model.Plug;
import stackside.render.PanelPlan.Place;
import stackside.render.PanelPlan.Use;
import stackside.render.Shape.Paint;
import stackside.render.Shape.Stroke;

/**
 * The outline of a plug from the centres of its pins: filled where it is plugged in, dashed where
 * it fits and must not go, grey where nothing goes.
 *
 * @param width at life size, in millimetres
 * @param height at life size, in millimetres
 */
record PlugOutline(List<Pin> pins, double width, double height, double midX, double midY) {
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
    return new PlugOutline(
        pins,
        right - left + 2 * BODY,
        bottom - top + 2 * BODY,
        (left + right) / 2,
        (top + bottom) / 2);
  }

  /** Stands in where the machine does not describe the plug: a single hole. */
  private static final List<Pin> NO_SHAPE = List.of(new Pin(0, 0));

  /** Draws it with its middle at a place. */
  void draw(Pen pen, double x, double y, double scale, Use use) {
    double wide = width * scale;
    double high = height * scale;
    double line = Math.min(pen.thick(), Math.min(wide, high) * 0.1);
    Paint body = body(use, line);
    pen.add(new Shape.Rect(x - wide / 2, y - high / 2, wide, high, BODY * scale, body));
    for (Pin pin : pins) {
      pen.add(
          new Shape.Circle(
              x + (pin.x() - midX) * scale,
              y + (pin.y() - midY) * scale,
              PIN * scale,
              hole(use, Math.min(pen.thin(), line))));
    }
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
