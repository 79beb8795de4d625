package stackside.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.energy.Crest;
import stackside.quantity.Seconds;
import stackside.render.Shape.Paint;
import stackside.render.Shape.Point;
import stackside.render.Shape.Polyline;
import stackside.render.Shape.Rect;
import stackside.render.Shape.Stroke;
import stackside.render.Shape.Weight;

/**
 * Draws voltages over time, all at the same effective voltage, so that the crest factor shows as
 * the height of the peak. Each is drawn as a gated sine with that crest factor, far slower than in
 * reality. A burst rhythm is drawn below it, to its own scale.
 */
public final class WaveDrawing {
  /** Approximate number of cycles of the sine across a strip. */
  private static final int SWINGS = 30;

  private static final int POINTS_A_SWING = 16;
  private static final int RHYTHMS = 3;

  /** The content of the drawing. */
  public record Plan(String title, String caption, List<Strip> strips) {
    public Plan {
      strips = List.copyOf(strips);
    }
  }

  /**
   * One waveform.
   *
   * @param says the crest factor, and the stretch of time that it covers
   */
  public record Strip(String name, String says, Crest crest, Optional<Rhythm> rhythm) {}

  /** Bursts and pauses. */
  public record Rhythm(Seconds on, Seconds every, String says) {}

  private final Plan plan;
  private final Pen pen;
  private final double width;

  /** The height of the effective voltage on the drawing. */
  private final double effective;

  private WaveDrawing(Plan plan, Sheet sheet) {
    this.plan = plan;
    this.pen = new Pen(sheet.text());
    this.width = sheet.width();
    this.effective = 0.75 * pen.text();
  }

  public static Drawing of(Plan plan, Sheet sheet) {
    return new WaveDrawing(plan, sheet).draw();
  }

  private Drawing draw() {
    double y = pen.caption(plan.caption(), width);
    for (Strip strip : plan.strips()) {
      y += 1.1 * pen.text();
      y = pen.block(0, y, width, strip.name(), Weight.BOLD, Ink.INK);
      y = pen.block(0, y, width, strip.says(), Weight.REGULAR, Ink.INK);
      y = wave(strip.crest(), y);
      if (strip.rhythm().isPresent()) {
        y = rhythm(strip.rhythm().get(), y + 0.6 * pen.text());
      }
    }
    return new Drawing(plan.title(), description(), width, y + pen.thick(), pen.shapes());
  }

  private double wave(Crest crest, double top) {
    double high = crest.factor() * effective;
    double middle = top + high + pen.thick();
    pen.add(new Rect(0, middle - effective, width, 2 * effective, 0, Paint.fill(Ink.SHADE)));
    pen.add(Polyline.line(0, middle, width, middle, Stroke.of(Ink.GREY, 0.04 * pen.text())));
    pen.add(
        new Polyline(
            trace(crest).stream()
                .map(point -> new Point(width * point.x(), middle - high * point.y()))
                .toList(),
            Stroke.of(Ink.INK, 0.1 * pen.text())));
    return middle + high + pen.thick();
  }

  /** The wave, in shares of the strip's width and of the peak. */
  static List<Point> trace(Crest crest) {
    double share = crest.ofSineLetThrough().share();
    double swings = Math.max(1, Math.rint(share * SWINGS / 2));
    double period = swings / share;
    int periods = (int) Math.max(2, Math.rint(SWINGS / period));
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < periods; i++) {
      for (int k = 0; k <= swings * POINTS_A_SWING; k++) {
        double at = (double) k / POINTS_A_SWING;
        points.add(
            new Point(
                (i * period + at) / (periods * period), StrictMath.sin(2 * StrictMath.PI * at)));
      }
    }
    points.add(new Point(1, 0));
    return points;
  }

  private double rhythm(Rhythm rhythm, double top) {
    double words = pen.block(0, top, width, rhythm.says(), Weight.REGULAR, Ink.INK);
    double bottom = words + 1.2 * pen.text();
    double second = width / (RHYTHMS * rhythm.every().value());
    for (int i = 0; i < RHYTHMS; i++) {
      pen.add(
          new Rect(
              i * rhythm.every().value() * second,
              words,
              rhythm.on().value() * second,
              bottom - words,
              0,
              Paint.fill(Ink.INK)));
    }
    pen.add(Polyline.line(0, bottom, width, bottom, pen.line(Ink.INK)));
    return bottom;
  }

  private String description() {
    return Drawing.description(
        plan.caption(), plan.strips().stream().flatMap(WaveDrawing::sentences));
  }

  private static Stream<String> sentences(Strip strip) {
    return Stream.concat(
        Stream.of(strip.name() + ": " + strip.says()), strip.rhythm().stream().map(Rhythm::says));
  }
}
