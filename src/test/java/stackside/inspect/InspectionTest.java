package stackside.inspect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Reads back what another library painted at a known place, and what our own cards hold. */
final class InspectionTest {

  private static final String CARD = "room-1-eq-1-settings";

  private final EditedUnit unit = EditedUnit.untouched();
  private final Inspection card = Inspection.of(unit.file(CARD));

  @Test
  void wordsAreReadWithPlaceSizeColourAndLetterHeights() {
    Inspection seen =
        Inspection.of(
            Overpaint.with(
                unit.file(CARD), Overpaint.words(20, 230, "Hx", 20, new Color(0x9b, 0x24, 0x23))));
    PrintedWords words =
        seen.words().stream().filter(each -> each.text().equals("Hx")).findFirst().orElseThrow();
    assertThat(words.base()).isCloseTo(230, within(0.05));
    assertThat(words.box().left()).isCloseTo(20, within(1.0));
    assertThat(words.points()).isCloseTo(20, within(0.01));
    assertThat(words.colour()).isEqualTo(new Colour(0x9b, 0x24, 0x23));
    assertThat(words.capital()).isCloseTo(20 * 0.668 * 25.4 / 72, within(0.01));
    assertThat(words.small()).isCloseTo(20 * 0.496 * 25.4 / 72, within(0.01));
    assertThat(words.roles()).isEmpty();
    assertThat(words.upright()).isTrue();
  }

  @Test
  void shapesAreReadWithPlaceAndColour() {
    Inspection seen =
        Inspection.of(Overpaint.with(unit.file(CARD), Overpaint.fill(30, 225, 12, 6, Color.RED)));
    PaintedArea area = seen.areas().get(seen.areas().size() - 1);
    assertThat(area.fill()).contains(new Colour(255, 0, 0));
    assertThat(area.box().left()).isCloseTo(30, within(0.01));
    assertThat(area.box().top()).isCloseTo(225, within(0.01));
    assertThat(area.box().width()).isCloseTo(12, within(0.01));
    assertThat(area.box().height()).isCloseTo(6, within(0.01));
  }

  @Test
  void structureRunsFromTheHeadingToTheCode() {
    List<String> roles =
        card.structure().stream()
            .filter(element -> element.depth() == 2)
            .map(StructureElement::role)
            .toList();
    assertThat(roles)
        .containsExactly(
            "H1", "P", "P", "H2", "Figure", "Figure", "Table", "P", "P", "P", "P", "Figure");
  }

  @Test
  void wordsAreReadInTheOrderOfThePlan() {
    String text = card.text();
    int from = 0;
    for (String words :
        unit.plan(CARD).phrases().map(phrase -> InspectedCard.spaced(phrase.words())).toList()) {
      int at = text.indexOf(words, from);
      assertThat(at).as("'%s' from %s", words, from).isNotNegative();
      from = at;
    }
  }

  @Test
  void drawingsHaveWordsThatStandForThem() {
    assertThat(card.structure())
        .filteredOn(element -> element.role().equals("Figure"))
        .extracting(element -> element.alternative().orElse(""))
        .anyMatch(words -> words.startsWith("Front panel of Arrowgrass. Socket 1"))
        .anyMatch(words -> words.contains("Left, yellow, cut"))
        .anyMatch(words -> words.startsWith("QR code: https://culvert.example/c/"));
  }

  @Test
  void codeIsReadFromItsModules() {
    ReadCode code = card.code().orElseThrow();
    assertThat(code.text()).isEqualTo(unit.plan(CARD).held());
    assertThat(code.box().width()).isCloseTo(30, within(0.05));
    assertThat(code.module()).isGreaterThanOrEqualTo(0.8);
    assertThat(code.clear()).isGreaterThanOrEqualTo(4);
    assertThat(code.level()).isEqualTo("Q");
  }

  /** Version 5 is 37 modules wide, 45 with its clear space (ISO/IEC 18004, as quoted by others). */
  @Test
  void longerAddressTakesALargerVersionAtTheSameWidth() {
    EditedUnit longer =
        EditedUnit.after(
            """
            === unit.yaml
            -address: https://culvert.example/
            +address: https://culvert.example/electrosurgery/
            """);
    ReadCode code = Inspection.of(longer.file(CARD)).code().orElseThrow();
    assertThat(code.box().width() / code.module()).isCloseTo(37, within(0.01));
    assertThat(code.box().width()).isCloseTo(30, within(0.05));
  }

  @Test
  void pageIsOneA4WithBothFacesEmbedded() {
    assertThat(card.pages()).isEqualTo(1);
    assertThat(card.width()).isCloseTo(210, within(0.01));
    assertThat(card.height()).isCloseTo(297, within(0.01));
    assertThat(card.fonts())
        .extracting(EmbeddedFont::bare)
        .containsExactly("AtkinsonHyperlegibleNext-Bold", "AtkinsonHyperlegibleNext-Regular");
    assertThat(card.fonts()).allMatch(EmbeddedFont::embedded);
  }
}
