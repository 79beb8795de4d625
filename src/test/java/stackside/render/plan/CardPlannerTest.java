package stackside.render.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import stackside.inspect.EditedUnit;
import stackside.render.Drawing;
import stackside.render.Marking;
import stackside.render.Shape;

/** What the cards of a small unit show, and in which order. */
final class CardPlannerTest {

  private static final String SETTINGS = "room-1-eq-1-settings";

  private static List<String> rows(EditedUnit unit, String card) {
    return unit.plan(card).blocks(Block.Answers.class).get(0).rows().stream()
        .map(
            row ->
                String.join(
                    " | ",
                    row.phrases().map(phrase -> phrase.words().replace('\u00a0', ' ')).toList()))
        .toList();
  }

  private static List<String> scopes(AnswerRow row) {
    return row.scopes().stream()
        .map(scope -> scope.what().words() + ". " + scope.where().words())
        .map(words -> words.replace('\u00a0', ' '))
        .toList();
  }

  @Test
  void everyQuestionStandsInOneRow_byLesionAndSite() {
    assertThat(rows(EditedUnit.untouched(), SETTINGS))
        .containsExactly(
            "Flat, under 10 mm: resection | Colon and rectum | Cold, no current. | Cold snare.",
            "Flat, 10 mm and over: resection, adult only | Caecum | 3 | EMR CAECUM | 1 | Oval snare |"
                + " Pulsed cut | rung 2 | 60 W | Brisk coag | rung 1 | 40 W",
            "Flat, 10 mm and over: resection, child only | Colon and rectum | Not approved. |"
                + " Refer to the children's hospital. Ask: lead endoscopist.",
            "Flat, 10 mm and over: resection, adult only | Rectum | 4 | EMR RECTUM | 1 | Oval snare |"
                + " Pulsed cut | rung 2 | 80 W | Brisk coag | rung 1 | 45 W",
            "Angiodysplasia: treatment | Colon and rectum | 7 | BIPOLAR | 3 | Two-pole grasper |"
                + " Unassigned | Tip coag | rung low | 20 W");
  }

  private static List<String> drills(EditedUnit unit, String card) {
    return unit.plan(card).blocks(Block.Drilled.class).stream()
        .map(drill -> drill.title().words())
        .toList();
  }

  @Test
  void drillOfWhatPassesUnnoticed_standsBeforeTheDrillOfAnAlarm() {
    assertThat(drills(EditedUnit.untouched(), "room-1-eq-1-set-up"))
        .containsExactly("No effect", "Alarm sounds");
  }

  @Test
  void withoutAWordOnWhichDrills_theTwoOfWorstConsequenceStand() {
    EditedUnit unit =
        EditedUnit.after(
            """
            === drills/alarm.yaml
            -on-card: yes
            === drills/no-effect.yaml
            -on-card: yes
            === drills/aardvark.yaml
            +id: aardvark
            +title: Odd smell
            +sign: {tissue: a smell of rubber}
            +for: all
            +make-safe: Foot off.
            +checks:
            +  - {do: Look at the mains plug, see: Fully in, mends: [mains-off], takes: 5 s}
            +escalate: yes
            """);
    assertThat(drills(unit, "room-1-eq-1-set-up")).containsExactly("No effect", "Alarm sounds");
  }

  @Test
  void cautionStandsInItsRow_andOtherwiseEqualAnswersDoNotShareIt() {
    EditedUnit unit =
        EditedUnit.after(
            """
            === profiles/arrowgrass.yaml
            -    lesions: [flat-small]
            -    sites: [colon]
            -    step: resection
            -    cold: Cold snare.
            -    evidence: [unit-consensus]
            +    lesions: [flat-small]
            +    sites: [rectum]
            +    step: resection
            +    cold: Cold snare.
            +    evidence: [unit-consensus]
            +  - id: arrowgrass-small-caecum
            +    lesions: [flat-small]
            +    sites: [caecum]
            +    step: resection
            +    cold: Cold snare.
            +    caution: The wall is thin here
            +    evidence: [unit-consensus]
            """);
    assertThat(rows(unit, SETTINGS))
        .contains(
            "Flat, under 10 mm: resection | Caecum | Caution: The wall is thin here. | Cold, no current. |"
                + " Cold snare.",
            "Flat, under 10 mm: resection | Rectum | Cold, no current. | Cold snare.");
  }

  @Test
  void argonRowCarriesItsFlow() {
    assertThat(rows(EditedUnit.untouched(), "room-2-eq-2-settings"))
        .containsExactly(
            "Angiodysplasia: treatment | Colon and rectum | 2 | Gas | B | Argon probe |"
                + " argon 0.8 L/min | Argon | step 2");
  }

  @Test
  void answersThatAreTheSame_shareARow() {
    EditedUnit unit =
        EditedUnit.after(
            """
            === profiles/arrowgrass.yaml
            -      program: {slot: 4, shown-as: "EMR RECTUM"}
            +      program: {slot: 3, shown-as: "EMR CAECUM"}
            === profiles/arrowgrass.yaml
            -      yellow: {mode: pulsed-cut, level: 2, limit: 80 W}
            -      blue: {mode: brisk, level: 1, limit: 45 W}
            +      yellow: {mode: pulsed-cut, level: 2, limit: 60 W}
            +      blue: {mode: brisk, level: 1, limit: 40 W}
            """);
    assertThat(unit.plan(SETTINGS).blocks(Block.Answers.class).get(0).rows().get(1))
        .satisfies(
            row ->
                assertThat(scopes(row))
                    .containsExactly(
                        "Flat, 10 mm and over: resection, adult only. Colon and rectum"));
  }

  @Test
  void lesionsWithTheSameAnswer_areNamedTogether() {
    EditedUnit unit =
        EditedUnit.after(
            """
            === profiles/arrowgrass.yaml
            -    not-approved: Refer to the children's hospital.
            -    ask: lead-endoscopist
            +    cold: Cold snare.
            """);
    AnswerRow row = unit.plan(SETTINGS).blocks(Block.Answers.class).get(0).rows().get(0);
    assertThat(scopes(row))
        .containsExactly(
            "Flat, under 10 mm: resection. Colon and rectum",
            "Flat, 10 mm and over: resection, child only. Colon and rectum");
  }

  @Test
  void alternativeStandsWithTheAnswerThatItIs_andSaysWhen() {
    EditedUnit unit =
        EditedUnit.after(
            """
            === profiles/arrowgrass.yaml
            -  - id: arrowgrass-small
            +  - id: arrowgrass-large-cold
            +    lesions: [flat-large]
            +    sites: [rectum]
            +    step: resection
            +    patients: [adult]
            +    cold: Cold snare.
            +    alternative: {name: Cold piecemeal, when: If the lift fails}
            +    evidence: [unit-consensus]
            +  - id: arrowgrass-small
            """);
    AnswerRow row = unit.plan(SETTINGS).blocks(Block.Answers.class).get(0).rows().get(0);
    assertThat(row.scopes()).hasSize(2);
    assertThat(row.scopes().get(0).alternative()).isEmpty();
    assertThat(row.scopes().get(1).alternative().orElseThrow().words())
        .isEqualTo("Alternative: cold piecemeal, if the lift fails");
  }

  @Test
  void questionWithoutAnswer_isARowThatSaysSo() {
    EditedUnit unit = EditedUnit.after("=== without profiles/arrowgrass.yaml\n");
    assertThat(rows(unit, SETTINGS))
        .singleElement()
        .satisfies(
            row ->
                assertThat(row)
                    .endsWith("No answer. | Nothing is approved here. Ask before you start."));
  }

  @Test
  void twoPreferredAnswers_arePrintedAsNeither() {
    EditedUnit unit =
        EditedUnit.after(
            """
            === profiles/arrowgrass.yaml
            -  - id: arrowgrass-small
            +  - id: arrowgrass-small-too
            +    lesions: [flat-small]
            +    sites: [colon]
            +    step: resection
            +    cold: Cold forceps.
            +    evidence: [unit-consensus]
            +  - id: arrowgrass-small
            """);
    assertThat(rows(unit, SETTINGS).get(0))
        .contains("More than one answer.")
        .doesNotContain("Cold forceps", "Cold snare");
  }

  @Test
  void panelShowsWhatThisCardPlugsIn_andWhatStaysEmpty() {
    Drawing panel = EditedUnit.untouched().plan(SETTINGS).blocks(Block.Maps.class).get(0).sockets();
    List<String> words =
        panel.shapes().stream()
            .filter(Shape.Words.class::isInstance)
            .map(shape -> ((Shape.Words) shape).text())
            .toList();
    assertThat(String.join(" ", words))
        .contains("Keep empty", "If 2 is used: usual tone, no current.")
        .contains("Two-pole grasper");
    assertThat(panel.description()).contains("Socket 2, Monopolar");
  }

  @Test
  void pedalThatMustBeLeftAlone_isNotTold() {
    EditedUnit unit = EditedUnit.pressingBlueOnly();
    assertThat(rows(unit, SETTINGS))
        .filteredOn(row -> row.contains("EMR RECTUM"))
        .singleElement()
        .asString()
        .contains("| Blue pedal only. | 4 |")
        .endsWith("| Do not press | Brisk coag | rung 1 | 45 W");
  }

  @Test
  void roomWithABluePedalOnly_hasNoColumnOfYellow() {
    EditedUnit unit = EditedUnit.untouched();
    assertThat(columns(unit, "room-2-eq-2-settings"))
        .containsExactly("Program", "Socket", "Instrument", "Blue: coagulation");
    assertThat(columns(unit, SETTINGS)).hasSize(5);
  }

  private static List<String> columns(EditedUnit unit, String card) {
    return unit.plan(card).blocks(Block.Answers.class).get(0).columns().stream()
        .map(Phrase::words)
        .toList();
  }

  @Test
  void quarantinedGenerator_hasNoCard() {
    EditedUnit unit = EditedUnit.after("=== assets.csv\n" + quarantine(EditedUnit.untouched()));
    assertThat(unit.plans()).isNotEmpty().noneMatch(plan -> plan.name().contains("eq-1"));
  }

  private static String quarantine(EditedUnit unit) {
    String line =
        unit.edit().files().get("assets.csv").stream()
            .filter(each -> each.startsWith("EQ-1,"))
            .findFirst()
            .orElseThrow();
    return "-" + line + "\n+" + line.replace("in use", "quarantined") + "\n";
  }

  @Test
  void partsShareTheRowsOut_eachWithItsOwnAddress() {
    EditedUnit unit =
        EditedUnit.after(
            """
            === rooms/room-1.yaml
            -copies: 1
            +cards:
            +  - {name: small, sites: [colon], lesions: [flat-small]}
            +  - {name: the rest, sites: [colon], lesions: [flat-large, angiodysplasia]}
            +copies: 1
            """);
    assertThat(rows(unit, SETTINGS + "-small")).hasSize(1);
    assertThat(rows(unit, SETTINGS + "-the-rest")).hasSize(4);
    assertThat(unit.plans().stream().map(CardPlan::code)).doesNotHaveDuplicates();
  }

  @Test
  void codeAndFingerprintDoNotDependOnWhereTheWordsStand() {
    EditedUnit moved =
        EditedUnit.after(
            """
            === rooms/room-1.yaml
            -id: room-1
            +# a remark
            +id: room-1
            """);
    CardPlan before = EditedUnit.untouched().plan(SETTINGS);
    CardPlan after = moved.plan(SETTINGS);
    assertThat(after.code()).isEqualTo(before.code());
    assertThat(after.fingerprint()).isEqualTo(before.fingerprint());
    assertThat(after.blocks()).isNotEqualTo(before.blocks());
  }

  @Test
  void fingerprintFollowsWhatIsSaid() {
    EditedUnit changed =
        EditedUnit.after(
            """
            === profiles/arrowgrass.yaml
            -    cold: Cold snare.
            +    cold: Cold forceps.
            """);
    assertThat(changed.plan(SETTINGS).fingerprint())
        .isNotEqualTo(EditedUnit.untouched().plan(SETTINGS).fingerprint());
  }

  @Test
  void drillEndsWithEveryNumber_andBeginsWithMakeSafe() {
    Block.Drilled drill =
        EditedUnit.untouched().plan("room-1-eq-1-set-up").blocks(Block.Drilled.class).get(0);
    assertThat(drill.title().words()).isEqualTo("No effect");
    assertThat(drill.sign().words()).isEqualTo("Usual tone. No whitening.");
    assertThat(drill.never().orElseThrow().words()).isEqualTo("Never: turn the power up instead.");
    assertThat(drill.steps().get(0).part()).isEqualTo(StepLine.Part.MAKE_SAFE);
    assertThat(drill.steps().get(4).action().words())
        .isEqualTo("If not mended, stop and call ext. 100 or ext. 200.");
  }

  @Test
  void issuedCardOfAClinicalUnit_hasNoMarks() {
    EditedUnit clinical =
        EditedUnit.after(
            "=== unit.yaml\n-status: demonstration\n+status: clinical\n", Marking.ISSUED);
    assertThat(clinical.plan(SETTINGS).blocks(Block.Marks.class)).isEmpty();
    assertThat(EditedUnit.untouched().plan(SETTINGS).blocks(Block.Marks.class))
        .singleElement()
        .satisfies(
            marks ->
                assertThat(marks.marks().stream().map(Phrase::words))
                    .containsExactly(
                        "DRAFT, do not hang.", "Demonstration: invented, not for patients."));
  }
}
