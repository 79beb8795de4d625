package stackside.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stackside.model.SocketKind;
import stackside.render.PanelPlan.Lead;
import stackside.render.PanelPlan.Misfit;
import stackside.render.PanelPlan.Place;
import stackside.render.PanelPlan.Use;

/**
 * The front panel of a card: what happens in a wrong socket, and that different sockets look
 * different.
 */
final class PanelStripTest {
  private static final Sheet CARD = new Sheet(108, 5.1);

  static Stream<PanelPlan> everyPanelOfTheDemonstration() {
    return SocketMapTest.everyPanelOfTheDemonstration();
  }

  @ParameterizedTest
  @MethodSource("everyPanelOfTheDemonstration")
  void socketThatStaysEmpty_saysWhatWouldHappen(PanelPlan plan) {
    String words = words(plan);
    for (Place place : plan.places()) {
      for (Misfit misfit : place.misfits()) {
        String lead = place.use() == Use.USED ? "Other instrument in " : "If ";
        assertThat(words)
            .containsPattern(
                lead + "[^:]*\\b" + place.label() + "\\b[^:]*: [^.]*" + misfit.outcome());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("everyPanelOfTheDemonstration")
  void cableThatGoesIntoTwoSockets_isToldByWhatHangsOnIt(PanelPlan plan) {
    String words = words(plan);
    Set<String> hands = new HashSet<>();
    for (Place place : plan.places()) {
      Set<String> here = place.leads().stream().map(Lead::hand).collect(Collectors.toSet());
      if (place.socket().kind().value() != SocketKind.NEUTRAL
          && here.stream().anyMatch(hands::contains)) {
        assertThat(words).contains(place.leads().stream().map(Lead::name).toList());
      }
      hands.addAll(here);
    }
  }

  @Test
  void someCableOfTheDemonstrationGoesIntoTwoSockets() {
    assertThat(everyPanelOfTheDemonstration().map(PanelStripTest::words))
        .anyMatch(words -> words.contains("Snare cable: Oval snare 15 mm"));
  }

  @ParameterizedTest
  @MethodSource("everyPanelOfTheDemonstration")
  void keepEmpty_standsOnOneLine(PanelPlan plan) {
    long empty = plan.places().stream().filter(place -> place.use() == Use.ALSO_FITS).count();
    assertThat(PanelStrip.of(plan, CARD).shapes())
        .filteredOn(Shape.Words.class::isInstance)
        .filteredOn(shape -> ((Shape.Words) shape).text().equals("Keep empty"))
        .hasSize((int) empty);
  }

  @ParameterizedTest
  @MethodSource("everyPanelOfTheDemonstration")
  void everyPlug_isAsLargeAsTheWordsBesideIt(PanelPlan plan) {
    Pen pen = new Pen(CARD.text());
    for (Place place : plan.places()) {
      PlugOutline plug = PlugOutline.of(place);
      assertThat(Math.min(plug.width(0.1, pen), plug.height(0.1, pen)))
          .isGreaterThanOrEqualTo(pen.capital());
    }
  }

  /** Without colour and from a distance, only the outline distinguishes them. */
  @Test
  void argonAndNeutralElectrode_shareNoKindOfShape() {
    List<Place> places =
        everyPanelOfTheDemonstration()
            .flatMap(plan -> plan.places().stream())
            .filter(place -> place.use() == Use.USED)
            .toList();
    Set<Class<?>> argon = shapes(places, SocketKind.ARGON);
    Set<Class<?>> neutral = shapes(places, SocketKind.NEUTRAL);
    assertThat(argon).containsExactly(Shape.Circle.class);
    assertThat(neutral).isNotEmpty().doesNotContainAnyElementsOf(argon);
    assertThat(shapes(places, SocketKind.MONOPOLAR)).isNotEqualTo(argon).isNotEqualTo(neutral);
  }

  private static Set<Class<?>> shapes(List<Place> places, SocketKind kind) {
    Pen pen = new Pen(5.1);
    places.stream()
        .filter(place -> place.socket().kind().value() == kind)
        .forEach(place -> PlugOutline.of(place).draw(pen, 0, 0, 0.5, place.use()));
    return pen.shapes().stream().map(Shape::getClass).collect(Collectors.toSet());
  }

  private static String words(PanelPlan plan) {
    return PanelStrip.of(plan, CARD).shapes().stream()
        .filter(Shape.Words.class::isInstance)
        .map(shape -> ((Shape.Words) shape).text().replace('\u00a0', ' '))
        .collect(Collectors.joining(" "));
  }
}
