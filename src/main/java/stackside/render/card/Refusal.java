package stackside.render.card;

import stackside.render.Ink;
import stackside.render.Shape;

/**
 * Distinguishes words that forbid a setting from words that are one: a grey background, and a cross
 * before them.
 */
record Refusal(CardStyle setting) {

  private static final double CLEAR = 0.4;

  /** Paints the background, clear of the rules above and below. */
  void ground(Canvas canvas, double x, double y, double width, double height) {
    Shape.Rect ground =
        new Shape.Rect(x, y + CLEAR, width, height - 2 * CLEAR, 0, Shape.Paint.fill(Ink.SHADE));
    canvas.artifact(() -> canvas.shape(ground, 0, 0));
  }

  /** The width of the cross and the space after it. */
  double room() {
    return 1.3 * em();
  }

  private double em() {
    return setting.scale().near() * Typeface.MILLIMETRES_PER_POINT;
  }

  /** Draws the cross as high as the capitals of the first line; returns the width that it takes. */
  double cross(Canvas canvas, double left, double top, Paragraph words) {
    double high = setting.letters().capital() * em();
    double x = left + 0.6;
    double base = top + words.base(0);
    Shape.Stroke stroke = Shape.Stroke.of(Ink.INK, 0.9);
    canvas.artifact(
        () -> {
          canvas.shape(Shape.Polyline.line(x, base - high, x + high, base, stroke), 0, 0);
          canvas.shape(Shape.Polyline.line(x, base, x + high, base - high, stroke), 0, 0);
        });
    return room();
  }
}
