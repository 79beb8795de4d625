package stackside.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stackside.energy.Area;
import stackside.energy.Crest;
import stackside.energy.LoadSpan;
import stackside.quantity.LoadRange;
import stackside.quantity.Millimetres;
import stackside.quantity.Ohms;
import stackside.quantity.Seconds;
import stackside.quantity.Watts;
import stackside.render.Shape.Circle;
import stackside.render.Shape.Point;
import stackside.render.Shape.Polyline;
import stackside.render.Shape.Rect;
import stackside.render.Shape.Words;

/** The handbook's figures as drawn: their lengths match the numbers that they show. */
final class FigureDrawingsTest {

  private static <T extends Shape> List<T> all(Drawing drawing, Class<T> type) {
    return drawing.shapes().stream().filter(type::isInstance).map(type::cast).toList();
  }

  /**
   * The peak of a trace divided by its own root mean square is the crest factor for which it is
   * drawn.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1.4143, 1.6, 2, 4.5, 6, 8})
  void aTraceHasTheCrestFactorThatItIsDrawnFor(double factor) {
    List<Point> trace = WaveDrawing.trace(new Crest(factor));
    double squares = 0;
    for (int i = 1; i < trace.size(); i++) {
      Point one = trace.get(i - 1);
      Point next = trace.get(i);
      squares += (next.x() - one.x()) * (one.y() * one.y() + next.y() * next.y()) / 2;
    }
    assertThat(trace).extracting(Point::x).isSorted().last().isEqualTo(1.0);
    assertThat(trace.stream().mapToDouble(Point::y).max()).hasValueCloseTo(1.0, within(1e-9));
    assertThat(1 / StrictMath.sqrt(squares)).isCloseTo(factor, within(0.01 * factor));
  }

  private static Drawing wave(double crest, Optional<WaveDrawing.Rhythm> rhythm) {
    return WaveDrawing.of(
        new WaveDrawing.Plan(
            "Waves",
            "Same effective voltage",
            List.of(
                new WaveDrawing.Strip(
                    "Cut", "Crest factor within the burst", new Crest(crest), rhythm))),
        Sheet.PAGE);
  }

  @Test
  void thePeakStandsAboveTheBandByTheCrestFactor() {
    Drawing drawing = wave(4.5, Optional.empty());
    double band = all(drawing, Rect.class).get(0).height();
    List<Point> trace = all(drawing, Polyline.class).get(1).points();
    double swing =
        trace.stream().mapToDouble(Point::y).max().orElseThrow()
            - trace.stream().mapToDouble(Point::y).min().orElseThrow();
    assertThat(swing / band).isCloseTo(4.5, within(1e-6));
  }

  @Test
  void burstsAndPausesHaveTheLengthsOfTheRhythm() {
    Drawing drawing =
        wave(
            1.6,
            Optional.of(
                new WaveDrawing.Rhythm(new Seconds(0.03), new Seconds(0.9), "On for 30 ms")));
    List<Rect> bursts = all(drawing, Rect.class);
    assertThat(bursts).hasSize(4);
    assertThat(bursts.get(1).width() / (bursts.get(2).x() - bursts.get(1).x()))
        .isCloseTo(0.03 / 0.9, within(1e-9));
  }

  @Test
  void areasAreDrawnToOneScale() {
    Drawing drawing =
        DensityDrawing.of(
            new DensityDrawing.Plan(
                "Density",
                "The same current",
                List.of(
                    new DensityDrawing.Stop(
                        "Loop", List.of("1 A"), Area.ofCircle(0.5), DensityDrawing.Form.ROUND),
                    new DensityDrawing.Stop(
                        "Pad",
                        List.of("0.002 A"),
                        Area.ofRectangle(10, 10),
                        DensityDrawing.Form.SQUARE))),
            Sheet.PHONE);
    double pad = all(drawing, Rect.class).get(0).width();
    double loop = 2 * all(drawing, Circle.class).get(0).radius();
    assertThat(pad / loop).isCloseTo(20, within(1e-9));
    assertThat(drawing.description()).isEqualTo("The same current. Loop: 1 A. Pad: 0.002 A.");
  }

  @Test
  void barsAreAsHighAsTheHeatingAndStalksAsWideAsTheyAre() {
    Drawing drawing =
        StalkDrawing.of(
            new StalkDrawing.Plan(
                "Stalks",
                "Heating",
                "same current",
                "same power",
                List.of(
                    new StalkDrawing.Bar(new Millimetres(10), 1, 1, "1 ×", "1 ×"),
                    new StalkDrawing.Bar(new Millimetres(5), 16, 4, "16 ×", "4 ×"))),
            Sheet.PAGE);
    List<Rect> bars = all(drawing, Rect.class).subList(2, 6);
    List<Circle> stalks = all(drawing, Circle.class);
    assertThat(bars.get(2).height() / bars.get(0).height()).isCloseTo(16, within(1e-9));
    assertThat(bars.get(3).height() / bars.get(1).height()).isCloseTo(4, within(1e-9));
    assertThat(drawing.description()).contains("same current, 16 ×; same power, 4 ×");
    assertThat(stalks.get(0).radius() / stalks.get(1).radius()).isCloseTo(2, within(1e-9));
  }

  private static OutputPlot.Curve curve(String name, double watts, Optional<LoadSpan> heavy) {
    return new OutputPlot.Curve(
        name,
        List.of(
            new OutputPlot.At(new Ohms(50), new Watts(watts)),
            new OutputPlot.At(new Ohms(500), new Watts(watts)),
            new OutputPlot.At(new Ohms(2000), new Watts(watts))),
        heavy);
  }

  private static Drawing plot(Optional<LoadSpan> heavy) {
    return OutputPlot.of(
        new OutputPlot.Plan(
            "Power",
            new LoadRange(new Ohms(50), new Ohms(2000)),
            List.of(
                curve("Soft coagulation", 60, heavy), curve("Pulsed cut", 58, Optional.empty())),
            Optional.empty(),
            Panels.WORDS),
        Sheet.PHONE);
  }

  @Test
  void fullPowerIsAHeavyLineOrADotWhereItIsKnownForOneLoad() {
    LoadSpan half = new LoadSpan(new Ohms(50), new Ohms(500));
    LoadSpan single = new LoadSpan(new Ohms(500), new Ohms(500));
    assertThat(heavyLines(plot(Optional.empty()))).isZero();
    assertThat(heavyLines(plot(Optional.of(half)))).isEqualTo(1);
    assertThat(heavyLines(plot(Optional.of(single)))).isZero();
    assertThat(all(plot(Optional.of(single)), Circle.class)).hasSize(1);
  }

  private static long heavyLines(Drawing drawing) {
    return all(drawing, Polyline.class).stream()
        .filter(line -> line.stroke().width() > 0.4 * Sheet.PHONE.text())
        .count();
  }

  @Test
  void namesThatNeedTwoLinesKeepTheirDistanceAndStayOnTheSheet() {
    List<Words> words =
        all(plot(Optional.empty()), Words.class).stream()
            .filter(each -> each.weight() == Shape.Weight.BOLD)
            .toList();
    assertThat(words).extracting(Words::text).containsExactly("Soft", "coagulation", "Pulsed cut");
    for (int i = 1; i < words.size(); i++) {
      assertThat(words.get(i).y() - words.get(i - 1).y())
          .isGreaterThanOrEqualTo(1.19 * Sheet.PHONE.text());
    }
    assertThat(words)
        .allSatisfy(
            each ->
                assertThat(
                        each.x() + Lettering.of(Shape.Weight.BOLD).width(each.text(), each.size()))
                    .isLessThanOrEqualTo(Sheet.PHONE.width()));
  }
}
