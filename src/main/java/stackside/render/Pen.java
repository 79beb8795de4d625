package stackside.render;

import java.util.ArrayList;
import java.util.List;
import stackside.render.Shape.Anchor;
import stackside.render.Shape.Paint;
import stackside.render.Shape.Stroke;
import stackside.render.Shape.Weight;

/**
 * Collects the shapes of a drawing. All its measures derive from the em of the drawing's words, so
 * that cards and pages have the same proportions.
 */
final class Pen {
  private final double text;
  private final List<Shape> shapes = new ArrayList<>();

  Pen(double text) {
    this.text = text;
  }

  /** The em of ordinary words. */
  double text() {
    return text;
  }

  double thin() {
    return 0.08 * text;
  }

  double thick() {
    return 0.14 * text;
  }

  double cable() {
    return 0.24 * text;
  }

  double pitch() {
    return Lettering.PITCH * text;
  }

  double capital() {
    return Lettering.CAPITAL * text;
  }

  List<Shape> shapes() {
    return List.copyOf(shapes);
  }

  void add(Shape shape) {
    shapes.add(shape);
  }

  void addAll(List<? extends Shape> more) {
    shapes.addAll(more);
  }

  /** A bookmark: shapes added at it later are painted below all that follows. */
  int here() {
    return shapes.size();
  }

  void addAt(int place, Shape shape) {
    shapes.add(place, shape);
  }

  void words(double x, double base, String words, Weight weight, Ink ink) {
    shapes.add(new Shape.Words(x, base, words, text, weight, Anchor.START, ink));
  }

  void middle(double x, double base, String words, Weight weight, Ink ink) {
    shapes.add(new Shape.Words(x, base, words, text, weight, Anchor.MIDDLE, ink));
  }

  /**
   * Draws words in lines of this width, the first capitals starting at {@code top}; returns their
   * end.
   */
  double block(double x, double top, double width, String words, Weight weight, Ink ink) {
    double base = top + capital();
    for (String line : Lettering.of(weight).lines(words, text, width)) {
      words(x, base, line, weight, ink);
      base += pitch();
    }
    return base - capital();
  }

  /** Draws the caption above a drawing of this width; returns where the drawing begins. */
  double caption(String words, double width) {
    return block(0, thin(), width, words, Weight.REGULAR, Ink.INK);
  }

  double width(String words, Weight weight) {
    return Lettering.of(weight).width(words, text);
  }

  /** Draws a word or number framed like a callout. */
  void pill(String label, double left, double top, Paint paint, Ink ink) {
    double width = pillWidth(label);
    double height = pillHeight();
    shapes.add(new Shape.Rect(left, top, width, height, height / 2, paint));
    double size = 1.1 * text;
    double base = top + height / 2 + size * Lettering.CAPITAL / 2;
    shapes.add(
        new Shape.Words(left + width / 2, base, label, size, Weight.BOLD, Anchor.MIDDLE, ink));
  }

  double pillWidth(String label) {
    return Math.max(pillHeight(), Lettering.of(Weight.BOLD).width(label, 1.1 * text) + 0.9 * text);
  }

  double pillHeight() {
    return 1.55 * text;
  }

  Stroke line(Ink ink) {
    return Stroke.of(ink, thin());
  }

  Stroke heavy(Ink ink) {
    return Stroke.of(ink, thick());
  }
}
