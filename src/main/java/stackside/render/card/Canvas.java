package stackside.render.card;

import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfStructureElement;
import java.util.List;
import stackside.render.Ink;
import stackside.render.Shape;
import stackside.render.Shape.Weight;

/**
 * The page on which blocks are painted. Lengths are millimetres from the top left corner. Every
 * mark is either part of the structure that a screen reader follows, or an artifact.
 */
final class Canvas {

  private static final double POINTS = 72 / 25.4;
  private static final PdfName ARTIFACT = new PdfName("Artifact");

  /** A circle is four curves: distance of the control points as a share of the radius. */
  private static final double CURVE = 0.5522847498;

  private final PdfContentByte content;
  private final Typeface typeface;
  private final double pageHeight;

  Canvas(PdfContentByte content, Typeface typeface, double pageHeight) {
    this.content = content;
    this.typeface = typeface;
    this.pageHeight = pageHeight;
  }

  /** Adds a structure element after those already in the parent. */
  static PdfStructureElement element(PdfStructureElement parent, String role) {
    return new PdfStructureElement(parent, new PdfName(role));
  }

  /** A cell that spans several columns. */
  static PdfStructureElement wideCell(PdfStructureElement row, int columns) {
    PdfStructureElement cell = element(row, "TD");
    PdfDictionary table = new PdfDictionary();
    table.put(new PdfName("O"), new PdfName("Table"));
    table.put(new PdfName("ColSpan"), new PdfNumber(columns));
    cell.put(PdfName.A, table);
    return cell;
  }

  /** A header cell that spans all columns of the next row. */
  static PdfStructureElement wideHeader(PdfStructureElement row, int columns) {
    PdfStructureElement cell = element(row, "TH");
    PdfDictionary table = new PdfDictionary();
    table.put(new PdfName("O"), new PdfName("Table"));
    table.put(new PdfName("Scope"), new PdfName("Row"));
    table.put(new PdfName("ColSpan"), new PdfNumber(columns));
    cell.put(PdfName.A, table);
    return cell;
  }

  /** A header cell for its column. */
  static PdfStructureElement columnHeader(PdfStructureElement row) {
    PdfStructureElement cell = element(row, "TH");
    PdfDictionary table = new PdfDictionary();
    table.put(new PdfName("O"), new PdfName("Table"));
    table.put(new PdfName("Scope"), new PdfName("Column"));
    cell.put(PdfName.A, table);
    return cell;
  }

  /** A figure with its alternative text. */
  PdfStructureElement figure(
      PdfStructureElement parent, String words, double x, double y, double width, double height) {
    PdfStructureElement figure = element(parent, "Figure");
    figure.put(PdfName.ALT, new PdfString(words, PdfString.TEXT_UNICODE));
    PdfDictionary layout = new PdfDictionary();
    layout.put(new PdfName("O"), new PdfName("Layout"));
    layout.put(
        PdfName.BBOX, new PdfArray(new float[] {px(x), py(y + height), px(x + width), py(y)}));
    figure.put(PdfName.A, layout);
    return figure;
  }

  /** Paints the content of an element. */
  void in(PdfStructureElement element, Runnable paint) {
    content.beginMarkedContentSequence(element);
    paint.run();
    content.endMarkedContentSequence();
  }

  /** Paints something that a screen reader skips. */
  void artifact(Runnable paint) {
    content.beginMarkedContentSequence(ARTIFACT);
    paint.run();
    content.endMarkedContentSequence();
  }

  /** Paints words on one line, with their base line at y. */
  void words(double x, double y, String words, Weight weight, double points, Ink ink) {
    content.beginText();
    content.setRGBColorFill(ink.red(), ink.green(), ink.blue());
    content.setFontAndSize(typeface.face(weight), (float) points);
    content.setTextMatrix(px(x), py(y));
    content.showText(Typeface.shown(words));
    content.endText();
  }

  void line(double x1, double y1, double x2, double y2, double width) {
    shape(Shape.Polyline.line(x1, y1, x2, y2, Shape.Stroke.of(Ink.INK, width)), 0, 0);
  }

  /** Paints a row of dots that guides the eye from x1 to x2. */
  void leader(double x1, double x2, double y) {
    content.saveState();
    stroke(Shape.Stroke.of(Ink.GREY, 0.35));
    content.setLineCap(PdfContentByte.LINE_CAP_ROUND);
    content.setLineDash(0f, (float) (1.6 * POINTS), 0f);
    content.moveTo(px(x1), py(y));
    content.lineTo(px(x2), py(y));
    content.stroke();
    content.restoreState();
  }

  void box(double x, double y, double width, double height, double stroke) {
    shape(
        new Shape.Rect(
            x, y, width, height, 0, Shape.Paint.outline(Shape.Stroke.of(Ink.INK, stroke))),
        0,
        0);
  }

  /** Fills squares of one size as a single path: the dark modules of a code. */
  void fill(List<Shape.Rect> squares) {
    content.saveState();
    content.setRGBColorFill(0, 0, 0);
    for (Shape.Rect each : squares) {
      content.rectangle(
          px(each.x()), py(each.y() + each.height()), length(each.width()), length(each.height()));
    }
    content.fill();
    content.restoreState();
  }

  /** Paints a shape of a drawing whose top left corner is at a point. */
  void shape(Shape shape, double left, double top) {
    content.saveState();
    if (shape instanceof Shape.Polyline line) {
      stroke(line.stroke());
      content.setLineCap(PdfContentByte.LINE_CAP_ROUND);
      content.setLineJoin(PdfContentByte.LINE_JOIN_ROUND);
      path(line.points(), left, top);
      content.stroke();
    } else if (shape instanceof Shape.Polygon polygon) {
      prepare(polygon.paint());
      path(polygon.points(), left, top);
      content.closePath();
      finish(polygon.paint());
    } else if (shape instanceof Shape.Rect rect) {
      prepare(rect.paint());
      rect(rect, left, top);
      finish(rect.paint());
    } else if (shape instanceof Shape.Circle circle) {
      prepare(circle.paint());
      circle(circle, left, top);
      finish(circle.paint());
    } else if (shape instanceof Shape.Words words) {
      words(words, left, top);
    } else {
      throw new IllegalStateException("unknown shape: " + shape);
    }
    content.restoreState();
  }

  private void words(Shape.Words words, double left, double top) {
    double points = words.size() * POINTS;
    double width = typeface.width(words.text(), words.weight(), points);
    double before =
        switch (words.anchor()) {
          case START -> 0;
          case MIDDLE -> width / 2;
          case END -> width;
        };
    words(
        left + words.x() - before,
        top + words.y(),
        words.text(),
        words.weight(),
        points,
        words.ink());
  }

  private void path(List<Shape.Point> points, double left, double top) {
    for (int i = 0; i < points.size(); i++) {
      float x = px(left + points.get(i).x());
      float y = py(top + points.get(i).y());
      if (i == 0) {
        content.moveTo(x, y);
      } else {
        content.lineTo(x, y);
      }
    }
  }

  private void rect(Shape.Rect rect, double left, double top) {
    float x = px(left + rect.x());
    float y = py(top + rect.y() + rect.height());
    double radius = Math.min(rect.radius(), Math.min(rect.width(), rect.height()) / 2);
    if (radius > 0) {
      content.roundRectangle(x, y, length(rect.width()), length(rect.height()), length(radius));
    } else {
      content.rectangle(x, y, length(rect.width()), length(rect.height()));
    }
  }

  private void circle(Shape.Circle circle, double left, double top) {
    float x = px(left + circle.x());
    float y = py(top + circle.y());
    float r = length(circle.radius());
    float c = (float) (r * CURVE);
    content.moveTo(x + r, y);
    content.curveTo(x + r, y + c, x + c, y + r, x, y + r);
    content.curveTo(x - c, y + r, x - r, y + c, x - r, y);
    content.curveTo(x - r, y - c, x - c, y - r, x, y - r);
    content.curveTo(x + c, y - r, x + r, y - c, x + r, y);
    content.closePath();
  }

  private void prepare(Shape.Paint paint) {
    paint.outline().ifPresent(this::stroke);
    paint.fill().ifPresent(ink -> content.setRGBColorFill(ink.red(), ink.green(), ink.blue()));
  }

  private void finish(Shape.Paint paint) {
    if (paint.outline().isPresent() && paint.fill().isPresent()) {
      content.fillStroke();
    } else if (paint.fill().isPresent()) {
      content.fill();
    } else {
      content.stroke();
    }
  }

  private void stroke(Shape.Stroke stroke) {
    Ink ink = stroke.ink();
    content.setRGBColorStroke(ink.red(), ink.green(), ink.blue());
    content.setLineWidth(length(stroke.width()));
    if (stroke.dash() == Shape.Dash.DASHED) {
      content.setLineDash(length(4 * stroke.width()), length(3 * stroke.width()), 0f);
    }
  }

  private static float px(double millimetres) {
    return length(millimetres);
  }

  private float py(double millimetres) {
    return length(pageHeight - millimetres);
  }

  /** Converts millimetres to points, rounded to a hundredth. */
  private static float length(double millimetres) {
    return Math.round(millimetres * POINTS * 100) / 100f;
  }
}
