package stackside.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stackside.render.Shape.Anchor;
import stackside.render.Shape.Paint;
import stackside.render.Shape.Point;
import stackside.render.Shape.Stroke;
import stackside.render.Shape.Weight;

/** Each shape as SVG, with lengths that are the same on every computer. */
final class SvgWriterTest {

  private static String svg(Shape shape) {
    return SvgWriter.svg(new Drawing("T", "D", 10, 5, List.of(shape)), "x");
  }

  @Test
  void aDrawingNamesItsTitleAndDescription() {
    assertThat(svg(new Shape.Circle(1, 2, 3, Paint.fill(Ink.INK))))
        .startsWith(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drawing\" role=\"img\""
                + " aria-labelledby=\"x-title x-description\" width=\"10mm\" height=\"5mm\""
                + " viewBox=\"0 0 10 5\">\n<title id=\"x-title\">T</title>\n"
                + "<desc id=\"x-description\">D</desc>\n")
        .endsWith("<circle cx=\"1\" cy=\"2\" r=\"3\" fill=\"#14171a\"/>\n</svg>\n");
  }

  @Test
  void aRectangleHasRoundCornersOnlyWhereAskedFor() {
    assertThat(svg(new Shape.Rect(0, 0, 2, 1, 0, Paint.fill(Ink.SHADE)))).doesNotContain("rx=");
    assertThat(svg(new Shape.Rect(0, 0, 2, 1, 0.5, Paint.fill(Ink.SHADE)))).contains("rx=\"0.5\"");
  }

  @Test
  void aDashedLineHasItsDashesFromItsWidth() {
    assertThat(svg(Shape.Polyline.line(0, 0, 1, 1, Stroke.dashed(Ink.INK, 0.5))))
        .contains("stroke-dasharray=\"2 1.5\"");
  }

  @Test
  void aPolygonMayHaveAnOutlineAndNoFill() {
    assertThat(
            svg(
                new Shape.Polygon(
                    List.of(new Point(0, 0), new Point(1, 0), new Point(0, 1)),
                    Paint.outline(Stroke.of(Ink.GREY, 0.1)))))
        .contains("points=\"0,0 1,0 0,1\" fill=\"none\" stroke=\"#4a5057\" stroke-width=\"0.1\"");
  }

  @Test
  void wordsAreEscaped() {
    assertThat(svg(new Shape.Words(0, 0, "a < b & \"c\"", 1, Weight.BOLD, Anchor.END, Ink.PAPER)))
        .contains(
            "<text x=\"0\" y=\"0\" font-size=\"1\" font-weight=\"700\" text-anchor=\"end\""
                + " fill=\"#ffffff\">a &lt; b &amp; &quot;c&quot;</text>");
  }

  @ParameterizedTest
  @CsvSource({
    "0,0",
    "1,1",
    "1.5,1.5",
    "0.05,0.05",
    "2.999,3",
    "-0.25,-0.25",
    "-0.001,0",
    "10.1,10.1"
  })
  void lengthsAreWrittenToAHundredth(double length, String text) {
    assertThat(SvgWriter.length(length)).isEqualTo(text);
  }

  @Test
  void everyMarkHasAShapeOfItsOwn() {
    assertThat(java.util.stream.Stream.of(Mark.values()).map(SvgWriter::mark))
        .doesNotHaveDuplicates()
        .allSatisfy(mark -> assertThat(mark).contains("aria-hidden=\"true\""));
  }
}
