package stackside.render;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Paints a drawing as SVG for embedding in a page. Uses presentation attributes only, with colours
 * in hex, so that the page's style sheet can change each colour of the palette, as a dark page
 * does.
 */
public final class SvgWriter {
  private final StringBuilder out = new StringBuilder();

  private SvgWriter() {}

  /**
   * The drawing as an element.
   *
   * @param id unique on the page; the ids of the title and the description derive from it
   */
  public static String svg(Drawing drawing, String id) {
    SvgWriter writer = new SvgWriter();
    writer.open(drawing, id);
    drawing.shapes().forEach(writer::shape);
    writer.out.append("</svg>\n");
    return writer.out.toString();
  }

  /** The shape of a status, as tall as the words beside it and hidden from screen readers. */
  public static String mark(Mark mark) {
    SvgWriter writer = new SvgWriter();
    writer.out.append(
        "<svg class=\"mark\" aria-hidden=\"true\" focusable=\"false\" viewBox=\"0 0 10 10\">");
    mark.at(5, 5, 10).forEach(writer::shape);
    writer.out.append("</svg>");
    return writer.out.toString();
  }

  private void open(Drawing drawing, String id) {
    String width = length(drawing.width());
    String height = length(drawing.height());
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drawing\" role=\"img\"");
    attribute("aria-labelledby", id + "-title " + id + "-description");
    attribute("width", width + "mm");
    attribute("height", height + "mm");
    attribute("viewBox", "0 0 " + width + " " + height);
    out.append(">\n");
    out.append("<title id=\"").append(escaped(id)).append("-title\">");
    out.append(escaped(drawing.title())).append("</title>\n");
    out.append("<desc id=\"").append(escaped(id)).append("-description\">");
    out.append(escaped(drawing.description())).append("</desc>\n");
  }

  private void shape(Shape shape) {
    if (shape instanceof Shape.Polyline line) {
      out.append("<polyline");
      points(line.points());
      attribute("fill", "none");
      attribute("stroke-linecap", "round");
      attribute("stroke-linejoin", "round");
      stroke(line.stroke());
      out.append("/>\n");
    } else if (shape instanceof Shape.Polygon polygon) {
      out.append("<polygon");
      points(polygon.points());
      paint(polygon.paint());
      out.append("/>\n");
    } else if (shape instanceof Shape.Rect rect) {
      rect(rect);
    } else if (shape instanceof Shape.Circle circle) {
      out.append("<circle");
      attribute("cx", length(circle.x()));
      attribute("cy", length(circle.y()));
      attribute("r", length(circle.radius()));
      paint(circle.paint());
      out.append("/>\n");
    } else if (shape instanceof Shape.Words words) {
      words(words);
    } else {
      throw new IllegalStateException("unknown shape: " + shape);
    }
  }

  private void rect(Shape.Rect rect) {
    out.append("<rect");
    attribute("x", length(rect.x()));
    attribute("y", length(rect.y()));
    attribute("width", length(rect.width()));
    attribute("height", length(rect.height()));
    if (rect.radius() > 0) {
      attribute("rx", length(rect.radius()));
    }
    paint(rect.paint());
    out.append("/>\n");
  }

  private void words(Shape.Words words) {
    out.append("<text");
    attribute("x", length(words.x()));
    attribute("y", length(words.y()));
    attribute("font-size", length(words.size()));
    if (words.weight() == Shape.Weight.BOLD) {
      attribute("font-weight", "700");
    }
    anchor(words.anchor()).ifPresent(anchor -> attribute("text-anchor", anchor));
    attribute("fill", words.ink().hex());
    out.append(">").append(escaped(words.text())).append("</text>\n");
  }

  private static Optional<String> anchor(Shape.Anchor anchor) {
    return switch (anchor) {
      case START -> Optional.empty();
      case MIDDLE -> Optional.of("middle");
      case END -> Optional.of("end");
    };
  }

  private void points(List<Shape.Point> points) {
    attribute(
        "points",
        points.stream()
            .map(point -> length(point.x()) + "," + length(point.y()))
            .collect(Collectors.joining(" ")));
  }

  private void paint(Shape.Paint paint) {
    attribute("fill", paint.fill().map(Ink::hex).orElse("none"));
    paint.outline().ifPresent(this::stroke);
  }

  private void stroke(Shape.Stroke stroke) {
    attribute("stroke", stroke.ink().hex());
    attribute("stroke-width", length(stroke.width()));
    if (stroke.dash() == Shape.Dash.DASHED) {
      attribute("stroke-dasharray", length(4 * stroke.width()) + " " + length(3 * stroke.width()));
    }
  }

  private void attribute(String name, String value) {
    out.append(' ').append(name).append("=\"").append(escaped(value)).append('"');
  }

  /** A length rounded to a hundredth of a millimetre, the same on every computer. */
  static String length(double millimetres) {
    long hundredths = Math.round(millimetres * 100);
    long whole = Math.abs(hundredths) / 100;
    long rest = Math.abs(hundredths) % 100;
    String digits = rest == 0 ? "" : "." + (rest < 10 ? "0" + rest : trimmed(rest));
    return (hundredths < 0 ? "-" : "") + whole + digits;
  }

  private static String trimmed(long rest) {
    return rest % 10 == 0 ? Long.toString(rest / 10) : Long.toString(rest);
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
