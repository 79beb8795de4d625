package stackside.derive.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import stackside.content.Reading;
import stackside.derive.Edited;
import stackside.model.Unit;

final class CoverageTest {

  private static String words(Cell cell) {
    return String.join(
        " ",
        cell.room().id().slug(),
        cell.asset().id().slug(),
        cell.lesion().id().slug(),
        cell.site().id().slug(),
        cell.step().id().slug(),
        cell.patients().id().slug());
  }

  @Test
  void everyOfferedQuestionIsAskedOnceForEachGenerator() {
    Coverage coverage = Coverage.of(Edited.base(""));
    assertThat(coverage.cells()).hasSize(3 * 2 * 2 + 2);
    assertThat(coverage.cells()).extracting(CoverageTest::words).doesNotHaveDuplicates();
    assertThat(words(coverage.cells().get(0)))
        .isEqualTo("room-1 EQ-1 flat-small caecum resection adult");
    assertThat(coverage.gaps()).isEmpty();
    assertThat(coverage.ambiguous()).isEmpty();
  }

  @Test
  void anOfferMadeTwiceIsAskedOnce() {
    Unit unit =
        Edited.base(
            """
            === rooms/room-1.yaml
            -  - {lesions: [flat-small, flat-large, angiodysplasia], sites: [colon]}
            +  - {lesions: [flat-small, flat-large, angiodysplasia], sites: [colon]}
            +  - {lesions: [flat-small], sites: [caecum]}
            """);
    assertThat(Coverage.of(unit).cells()).hasSize(14);
  }

  @Test
  void aSiteWithoutAnAnswerIsAGap() {
    Unit unit =
        Edited.base(
            """
            === profiles/arrowgrass.yaml
                 lesions: [flat-small]
            -    sites: [colon]
            +    sites: [rectum]
            """);
    assertThat(Coverage.of(unit).gaps())
        .extracting(CoverageTest::words)
        .containsExactly(
            "room-1 EQ-1 flat-small caecum resection adult",
            "room-1 EQ-1 flat-small caecum resection child");
  }

  @Test
  void twoPreferredAnswersAreAmbiguous() {
    Unit unit =
        Edited.base(
            """
            === profiles/arrowgrass.yaml
            -    sites: [rectum]
            +    sites: [colon]
            """);
    List<Cell> ambiguous = Coverage.of(unit).ambiguous();
    assertThat(ambiguous)
        .extracting(CoverageTest::words)
        .containsExactly("room-1 EQ-1 flat-large caecum resection adult");
    assertThat(ambiguous.get(0).cover().preferred())
        .extracting(profile -> profile.id().slug())
        .containsExactly("arrowgrass-large-caecum", "arrowgrass-large-rectum");
    assertThat(ambiguous.get(0).cover().answer()).isEmpty();
  }

  @Test
  void anAlternativeStandsBesideThePreferredAnswer() {
    Unit unit =
        Edited.base(
            """
            === profiles/arrowgrass.yaml
            -  - id: arrowgrass-small
            +  - {id: arrowgrass-small-hot, lesions: [flat-small], sites: [caecum], step: resection, cold: Forceps., alternative: {name: Forceps, when: the snare slips}}
            +  - id: arrowgrass-small
            """);
    Cell cell = Coverage.of(unit).cells().get(0);
    assertThat(cell.cover().answer().orElseThrow().id().slug()).isEqualTo("arrowgrass-small");
    assertThat(cell.cover().alternatives())
        .extracting(profile -> profile.id().slug())
        .containsExactly("arrowgrass-small-hot");
    assertThat(Coverage.of(unit).ambiguous()).isEmpty();
  }

  @Test
  void anAlternativeAloneIsAGap() {
    Unit unit =
        Edited.base(
            """
            === profiles/arrowgrass.yaml
                 cold: Cold snare.
            +    alternative: {name: Cold, when: it is small}
            """);
    Coverage coverage = Coverage.of(unit);
    assertThat(coverage.gaps()).hasSize(4);
    assertThat(coverage.gaps().get(0).cover().alternatives()).hasSize(1);
  }

  @Test
  void whileAProfileIsBrokenItsAbsenceSaysNothing() {
    Reading reading =
        Edited.reading(
            """
            === profiles/arrowgrass.yaml
                 lesions: [flat-small]
            -    sites: [colon]
            +    sites: [no-such-site]
            """);
    assertThat(reading.problems()).isNotEmpty();
    Coverage coverage = Coverage.of(reading.unit().orElseThrow());
    assertThat(coverage.gaps()).isEmpty();
    assertThat(coverage.cells().get(0).cover()).isInstanceOf(Cover.Unclear.class);
  }

  @Test
  void questionsAreFoundByRoomAndGenerator() {
    Unit unit = Edited.base("");
    Coverage coverage = Coverage.of(unit);
    assertThat(coverage.of(unit.rooms().get(0))).hasSize(12);
    assertThat(coverage.of(unit.rooms().get(1), unit.assets().get(1))).hasSize(2);
    assertThat(coverage.of(unit.rooms().get(1), unit.assets().get(0))).isEmpty();
  }
}
