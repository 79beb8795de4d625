package stackside.derive.guidance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stackside.derive.Edited;

final class QuestionsTest {

  private static Questions questions(String patch) {
    return Questions.of(Edited.base(patch));
  }

  // --- walls

  @Test
  void lowerAtTheThinnerWallIsQuiet() {
    assertThat(questions("").walls()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"2,85 W", "3,60 W"})
  void morePowerOrAHigherLevelAtTheThinnerWallIsAskedAbout(String level, String limit) {
    List<WallQuestion> walls =
        questions(
                """
                === profiles/arrowgrass.yaml
                -      yellow: {mode: pulsed-cut, level: 2, limit: 60 W}
                +      yellow: {mode: pulsed-cut, level: %s, limit: %s}
                """
                    .formatted(level, limit))
            .walls();
    assertThat(walls)
        .singleElement()
        .satisfies(
            wall -> {
              assertThat(wall.thinner().id().slug()).isEqualTo("arrowgrass-large-caecum");
              assertThat(wall.thinnerSite().id().slug()).isEqualTo("caecum");
              assertThat(wall.thicker().id().slug()).isEqualTo("arrowgrass-large-rectum");
              assertThat(wall.lesion().id().slug()).isEqualTo("flat-large");
              assertThat(wall.higher().limit().orElseThrow().value().text()).isEqualTo(limit);
              assertThat(wall.lower().limit().orElseThrow().value().text()).isEqualTo("80 W");
            });
  }

  @Test
  void theSameEverywhereIsQuiet() {
    assertThat(
            questions(
                    """
                    === profiles/arrowgrass.yaml
                    -      yellow: {mode: pulsed-cut, level: 2, limit: 60 W}
                    +      yellow: {mode: pulsed-cut, level: 2, limit: 80 W}
                    """)
                .walls())
        .isEmpty();
  }

  @Test
  void anotherModeIsNotCompared() {
    assertThat(
            questions(
                    """
                    === profiles/arrowgrass.yaml
                    -      blue: {mode: brisk, level: 1, limit: 40 W}
                    +      blue: {mode: bipolar, level: high, limit: 50 W}
                    """)
                .walls())
        .isEmpty();
  }

  @Test
  void otherPatientsAndAlternativesAreNotCompared() {
    String higher =
        """
        === profiles/arrowgrass.yaml
        -    patients: [adult]
        -    settings:
        -      program: {slot: 3, shown-as: "EMR R"}
        -      instrument: snare
        -      socket: mono-1
        -      yellow: {mode: pulsed-cut, level: 2, limit: 60 W}
        +    patients: [%s]
        +    %s
        +    settings:
        +      program: {slot: 3, shown-as: "EMR R"}
        +      instrument: snare
        +      socket: mono-1
        +      yellow: {mode: pulsed-cut, level: 2, limit: 100 W}
        """;
    assertThat(questions(higher.formatted("adult", "because: {}")).walls()).hasSize(1);
    assertThat(questions(higher.formatted("child", "because: {}")).walls()).isEmpty();
    assertThat(
            questions(higher.formatted("adult", "alternative: {name: Hot, when: large}")).walls())
        .isEmpty();
  }

  // --- cold snare

  private static String hotSmall(String lesion) {
    return """
        === profiles/arrowgrass.yaml
        -    cold: Cold snare.
        +    settings:
        +      program: {slot: 9, shown-as: "SMALL"}
        +      instrument: snare
        +      socket: mono-1
        +      yellow: {mode: pulsed-cut, level: 1, limit: 30 W}
        +      blue: {mode: brisk, level: 1, limit: 30 W}
        +      neutral-electrode: split-adult
        === lesions.yaml
        -  - {id: flat-small, name: "Flat, under 10 mm", shape: non-pedunculated, size: under 10 mm, steps: [resection]}
        +  - {id: flat-small, name: "Flat, small", %s}
        """
        .formatted(lesion);
  }

  /** ESGE 2024, recommendations 1, 3 and 7 (READ); USMSTF 2020 for sizes under 10 mm (READ). */
  @ParameterizedTest
  @CsvSource({
    "'shape: non-pedunculated, size: under 10 mm, steps: [resection]','[DIMINUTIVE, SMALL]'",
    "'shape: non-pedunculated, size: under 6 mm, steps: [resection]','[DIMINUTIVE]'",
    "'shape: non-pedunculated, size: 6 mm to 10 mm, steps: [resection]','[SMALL]'",
    "'shape: non-pedunculated, kind: adenoma, size: under 10 mm, steps: [resection]','[DIMINUTIVE, SMALL]'",
    "'shape: non-pedunculated, kind: serrated, steps: [resection]','[SERRATED]'",
    "'shape: non-pedunculated, kind: serrated, size: 20 mm and over, steps: [resection]','[SERRATED]'",
    "'shape: non-pedunculated, size: under 10 mm, steps: [treatment, resection]','[DIMINUTIVE, SMALL]'"
  })
  void currentWhereAColdSnareIsRecommendedIsAskedAbout(String lesion, String recommendations) {
    assertThat(questions(hotSmall(lesion)).coldSnare())
        .singleElement()
        .satisfies(
            question -> {
              assertThat(question.recommendations()).hasToString(recommendations);
              assertThat(question.profile().id().slug()).isEqualTo("arrowgrass-small");
              assertThat(question.site().id().slug()).isEqualTo("caecum");
            });
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "shape: pedunculated, size: under 10 mm, steps: [resection]",
        "shape: non-pedunculated, size: under 20 mm, steps: [resection]",
        "shape: non-pedunculated, size: 10 mm to 20 mm, steps: [resection]",
        "shape: non-pedunculated, kind: scar, size: under 10 mm, steps: [resection]",
        "shape: non-pedunculated, kind: vascular, size: under 10 mm, steps: [resection]",
        "shape: pedunculated, kind: serrated, steps: [resection]",
        "kind: vascular, steps: [resection]",
        "steps: [resection]"
      })
  void whatTheGuidanceDoesNotCoverIsQuiet(String lesion) {
    assertThat(questions(hotSmall(lesion)).coldSnare()).isEmpty();
  }

  @Test
  void theDuodenumIsQuiet() {
    String upper =
        hotSmall("shape: non-pedunculated, size: under 10 mm, steps: [resection]")
            + """
            === sites.yaml
            -  - {id: caecum, name: Caecum, tract: lower, wall: thin}
            -  - {id: rectum, name: Rectum, tract: lower, wall: thick}
            +  - {id: caecum, name: Duodenum, tract: upper, wall: thin}
            +  - {id: rectum, name: Stomach, tract: upper, wall: thick}
            """;
    assertThat(questions(upper).coldSnare()).isEmpty();
  }

  @Test
  void marginAndBleedingAreQuiet() {
    String margin =
        hotSmall("shape: non-pedunculated, size: under 10 mm, steps: [resection, treatment]")
            + """
            === profiles/arrowgrass.yaml
            -    lesions: [flat-small]
            -    sites: [colon]
            -    step: resection
            +    lesions: [flat-small]
            +    sites: [colon]
            +    step: treatment
            """;
    assertThat(questions(margin).coldSnare()).isEmpty();
  }

  @Test
  void coldAnswersAreQuiet() {
    assertThat(questions("").coldSnare()).isEmpty();
  }

  // --- sparks and powers

  /** About 200 V peak (Farin and Grund; ASGE 2013; from memory). */
  @ParameterizedTest
  @CsvSource({"199 V peak,0", "200 V peak,1", "230 V peak,1"})
  void aSoftModeThatCanSpark(String peak, int asked) {
    List<SparkQuestion> sparks =
        questions(
                """
                === machines/birch.yaml
                -    peak-voltage: 190 V peak
                +    peak-voltage: %s
                """
                    .formatted(peak))
            .sparks();
    assertThat(sparks).hasSize(asked);
    assertThat(sparks)
        .allMatch(spark -> spark.doubt() == SparkQuestion.Doubt.SOFT_MODE_CAN_SPARK)
        .allMatch(spark -> spark.level().isEmpty());
  }

  @Test
  void aCutThatCannotSparkIsAskedAboutByLevel() {
    List<SparkQuestion> sparks =
        questions(
                """
                === machines/arrowgrass.yaml
                -    peak-voltage: {1: 480 V peak, 2: 520 V peak, 3: 600 V peak}
                +    peak-voltage: {1: 180 V peak, 2: 200 V peak, 3: 600 V peak}
                """)
            .sparks();
    assertThat(sparks)
        .singleElement()
        .satisfies(
            spark -> {
              assertThat(spark.doubt()).isEqualTo(SparkQuestion.Doubt.CUT_CANNOT_SPARK);
              assertThat(spark.level().orElseThrow().text()).isEqualTo("1");
            });
  }

  @Test
  void forcedCoagulationMaySpark() {
    assertThat(questions("").sparks()).isEmpty();
  }

  /** 400 W averaged over a second (IEC 60601-2-2, from memory). */
  @ParameterizedTest
  @CsvSource({"400 W,0", "405 W,1"})
  void moreThanFourHundredWatts(String most, int over) {
    assertThat(
            questions(
                    """
                    === machines/arrowgrass.yaml
                    -    power-limit: 10 W to 110 W in steps of 5 W
                    +    power-limit: 10 W to %s in steps of 5 W
                    """
                        .formatted(most))
                .overMost())
        .hasSize(over);
  }

  @Test
  void aLevelRatedOverFourHundredWatts() {
    assertThat(
            questions(
                    """
                    === machines/birch.yaml
                    -    rated-power: {1: 15 W, 2: 25 W, 3: 40 W, 4: 60 W}
                    +    rated-power: {1: 15 W, 2: 25 W, 3: 40 W, 4: 600 W}
                    """)
                .overMost())
        .singleElement()
        .satisfies(over -> assertThat(over.power().value().text()).isEqualTo("600 W"));
  }
}
