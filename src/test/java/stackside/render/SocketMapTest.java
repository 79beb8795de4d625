package stackside.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stackside.Units;
import stackside.model.Asset;
import stackside.model.Fact;
import stackside.model.Room;
import stackside.model.Socket;
import stackside.render.PanelPlan.Place;
import stackside.render.PanelPlan.Use;
import stackside.render.Shape.Point;
import stackside.render.Shape.Polyline;
import stackside.render.Shape.Words;

/**
 * The front panel as drawn: real order, the machine's labels, no crossing cables, and what happens.
 */
final class SocketMapTest {
  private static final Publication DEMONSTRATION = Panels.publication(Units.demonstration());

  static Stream<PanelPlan> everyPanelOfTheDemonstration() {
    return DEMONSTRATION.unit().rooms().stream()
        .flatMap(
            room ->
                room.assets().stream()
                    .map(asset -> PanelPlans.in(DEMONSTRATION, room, asset.value())));
  }

  private static PanelPlan plan() {
    Socket one = Panels.socket("a", "1", "Monopolar", 1, 1);
    Socket two = Panels.socket("b", "2", "Monopolar", 1, 2);
    Socket three = Panels.socket("c", "3", "Spare", 2, 2);
    return new PanelPlan(
        Panels.machine(one, two, three),
        List.of(
            Panels.used(one, "Oval snare"),
            Panels.alsoFits(two, "Cable also fits", "usual tone, no current"),
            Panels.unused(three)),
        Panels.WORDS);
  }

  @Test
  void labelsStandInTheTrueOrderOfThePanel() {
    List<Words> labels = words(SocketMap.of(plan(), Sheet.PAGE), "1", "2", "3");
    Words one = labels.get(0);
    Words two = labels.stream().filter(each -> each.text().equals("2")).findFirst().orElseThrow();
    Words three = labels.stream().filter(each -> each.text().equals("3")).findFirst().orElseThrow();
    assertThat(one.x()).isLessThan(two.x());
    assertThat(one.y()).isEqualTo(two.y());
    assertThat(three.y()).isGreaterThan(two.y());
  }

  @Test
  void theLabelIsTheCalloutAtBothEndsOfTheCable() {
    assertThat(words(SocketMap.of(plan(), Sheet.PAGE), "1")).hasSize(2);
    assertThat(words(SocketMap.of(plan(), Sheet.PAGE), "2")).hasSize(1);
  }

  @Test
  void whatElseFitsIsToldInWords() {
    Drawing drawing = SocketMap.of(plan(), Sheet.PAGE);
    assertThat(text(drawing)).contains("Cable also fits", "usual tone, no current");
    assertThat(drawing.description()).contains("Cable also fits: usual tone, no current");
  }

  @Test
  void anUnusedSocketIsNamedInGrey() {
    assertThat(words(SocketMap.of(plan(), Sheet.PAGE), "Spare"))
        .extracting(Words::ink)
        .containsExactly(Ink.GREY);
  }

  @Test
  void aThumbnailHasLabelsAndNoOtherWords() {
    assertThat(text(SocketMap.thumbnail(plan(), 44))).containsExactlyInAnyOrder("1", "2", "3");
  }

  @ParameterizedTest
  @MethodSource("everyPanelOfTheDemonstration")
  void noTwoCablesCrossAtAnySize(PanelPlan plan) {
    for (Sheet sheet : List.of(Sheet.PAGE, Sheet.PHONE, new Sheet(190, Sheet.millimetres(14.5)))) {
      List<Polyline> cables = cables(SocketMap.of(plan, sheet), sheet);
      for (int i = 0; i < cables.size(); i++) {
        for (int j = i + 1; j < cables.size(); j++) {
          assertThat(cross(cables.get(i), cables.get(j)))
              .as(plan.machine().title() + " at " + sheet)
              .isFalse();
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("everyPanelOfTheDemonstration")
  void everySocketInUseHasItsCable(PanelPlan plan) {
    long used = plan.places().stream().filter(place -> place.use() == Use.USED).count();
    assertThat(cables(SocketMap.of(plan, Sheet.PAGE), Sheet.PAGE)).hasSize((int) used);
  }

  @ParameterizedTest
  @MethodSource("everyPanelOfTheDemonstration")
  void allWordsLieOnTheSheet(PanelPlan plan) {
    for (Sheet sheet : List.of(Sheet.PAGE, Sheet.PHONE)) {
      Drawing drawing = SocketMap.of(plan, sheet);
      for (Words words : allWords(drawing)) {
        double width = Lettering.of(words.weight()).width(words.text(), words.size());
        double left = words.anchor() == Shape.Anchor.MIDDLE ? words.x() - width / 2 : words.x();
        assertThat(left).as(words.text()).isGreaterThanOrEqualTo(-0.01);
        assertThat(left + width).as(words.text()).isLessThanOrEqualTo(drawing.width() + 0.5);
        assertThat(words.y()).as(words.text()).isLessThanOrEqualTo(drawing.height());
      }
    }
  }

  @Test
  void theWrongSocketOfAMachineThatCannotTellIsDrawnAsSilent() {
    Room room =
        DEMONSTRATION.unit().rooms().stream()
            .filter(each -> each.id().slug().equals("room-2"))
            .findFirst()
            .orElseThrow();
    Fact<Asset> asset = room.assets().get(0);
    PanelPlan plan = PanelPlans.in(DEMONSTRATION, room, asset.value());
    assertThat(plan.places().stream().map(Place::misfits).flatMap(List::stream))
        .isNotEmpty()
        .allSatisfy(misfit -> assertThat(misfit.outcome()).isEqualTo("usual tone, no current"))
        .allSatisfy(misfit -> assertThat(misfit.mark()).isEqualTo(Mark.DIAMOND));
  }

  @Test
  void instrumentsWithTheSameOutcomeShareARemarkAndWhatWorksIsNone() {
    Room room =
        DEMONSTRATION.unit().rooms().stream()
            .filter(each -> each.id().slug().equals("room-1"))
            .findFirst()
            .orElseThrow();
    PanelPlan plan = PanelPlans.in(DEMONSTRATION, room, room.assets().get(0).value());
    assertThat(plan.places().stream().flatMap(place -> place.misfits().stream()))
        .extracting(PanelPlan.Misfit::what)
        .containsExactly("Not Oval snare 15\u00a0mm or Crescent snare 25\u00a0mm");
    assertThat(plan.places().stream().flatMap(place -> place.misfits().stream()))
        .noneMatch(misfit -> misfit.outcome().contains("current as set"));
  }

  private static List<Words> allWords(Drawing drawing) {
    return drawing.shapes().stream()
        .filter(Words.class::isInstance)
        .map(Words.class::cast)
        .toList();
  }

  private static List<Words> words(Drawing drawing, String... texts) {
    return allWords(drawing).stream()
        .filter(words -> List.of(texts).contains(words.text()))
        .toList();
  }

  private static List<String> text(Drawing drawing) {
    return allWords(drawing).stream().map(Words::text).toList();
  }

  /** Only cables are lines of this thickness. */
  private static List<Polyline> cables(Drawing drawing, Sheet sheet) {
    List<Polyline> cables = new ArrayList<>();
    for (Shape shape : drawing.shapes()) {
      if (shape instanceof Polyline line && line.stroke().width() > 0.2 * sheet.text()) {
        cables.add(line);
      }
    }
    return cables;
  }

  private static boolean cross(Polyline one, Polyline other) {
    for (int i = 1; i < one.points().size(); i++) {
      for (int j = 1; j < other.points().size(); j++) {
        if (cross(
            one.points().get(i - 1),
            one.points().get(i),
            other.points().get(j - 1),
            other.points().get(j))) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean cross(Point a, Point b, Point c, Point d) {
    return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
  }

  private static double side(Point a, Point b, Point p) {
    return (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
  }
}
