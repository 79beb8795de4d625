package stackside.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import stackside.Units;
import stackside.model.FootSwitch;
import stackside.model.Kind;
import stackside.model.Pedal;
import stackside.model.PedalAction;
import stackside.model.PedalColour;
import stackside.model.Settings;
import stackside.model.ThingId;
import stackside.render.PedalPlan.Place;
import stackside.render.Shape.Rect;
import stackside.render.Shape.Words;

/** Pedals as drawn: sides as the foot finds them, colours with word and outline. */
final class PedalMapTest {

  private static FootSwitch twin() {
    return new FootSwitch(
        Panels.AT,
        new ThingId(Kind.FOOT_SWITCH, "twin"),
        Panels.fact("Twin"),
        List.of(
            new Pedal(Panels.AT, Panels.fact(PedalColour.YELLOW), Panels.fact(PedalAction.CUT)),
            new Pedal(
                Panels.AT, Panels.fact(PedalColour.BLUE), Panels.fact(PedalAction.COAGULATION))));
  }

  @Test
  void theFirstPedalOfTheContentIsOnTheLeft() {
    List<Words> words = words(PedalMap.of(PedalPlan.of(twin(), Panels.WORDS), Sheet.PAGE));
    double left = x(words, "Left: yellow");
    double right = x(words, "Right: blue");
    assertThat(left).isLessThan(right);
  }

  @Test
  void everyColourHasAnOutlineInInkAndItsWord() {
    Drawing drawing = PedalMap.of(PedalPlan.of(twin(), Panels.WORDS), Sheet.PHONE);
    List<Rect> swatches =
        drawing.shapes().stream()
            .filter(Rect.class::isInstance)
            .map(Rect.class::cast)
            .filter(rect -> rect.paint().fill().stream().anyMatch(PedalMapTest::isPedalColour))
            .toList();
    assertThat(swatches)
        .hasSize(2)
        .allSatisfy(
            swatch -> assertThat(swatch.paint().outline().orElseThrow().ink()).isEqualTo(Ink.INK));
    assertThat(words(drawing)).extracting(Words::text).contains("Cut", "Coagulation");
  }

  private static boolean isPedalColour(Ink ink) {
    return ink == Ink.YELLOW || ink == Ink.BLUE;
  }

  @Test
  void aSinglePedalIsNeitherLeftNorRight() {
    FootSwitch single =
        new FootSwitch(
            Panels.AT,
            new ThingId(Kind.FOOT_SWITCH, "one"),
            Panels.fact("One"),
            twin().pedals().subList(1, 2));
    assertThat(PedalPlan.of(single, Panels.WORDS).pedals())
        .extracting(Place::side)
        .containsExactly("Only pedal");
  }

  @Test
  void aPedalThatMustBeLeftAloneBearsACross() {
    Settings margin =
        Units.demonstration().profiles().stream()
            .flatMap(profile -> profile.settings().stream())
            .filter(settings -> settings.forbids(PedalColour.YELLOW))
            .findFirst()
            .orElseThrow();
    Drawing drawing = PedalMap.of(PedalPlan.of(twin(), margin, Panels.WORDS), Sheet.PAGE);
    assertThat(words(drawing))
        .filteredOn(words -> words.weight() == Shape.Weight.BOLD)
        .extracting(Words::text)
        .contains("Do not press");
    assertThat(drawing.shapes()).filteredOn(Shape.Polyline.class::isInstance).hasSize(2);
    assertThat(drawing.description()).startsWith("Left, yellow, cut: Do not press. Right, blue");
  }

  @Test
  void theDescriptionSaysWhatTheDrawingShows() {
    assertThat(PedalMap.of(PedalPlan.of(twin(), Panels.WORDS), Sheet.PAGE).description())
        .isEqualTo("Left, yellow, cut. Right, blue, coagulation.");
  }

  private static List<Words> words(Drawing drawing) {
    return drawing.shapes().stream()
        .filter(Words.class::isInstance)
        .map(Words.class::cast)
        .toList();
  }

  private static double x(List<Words> words, String text) {
    return words.stream().filter(each -> each.text().equals(text)).findFirst().orElseThrow().x();
  }
}
