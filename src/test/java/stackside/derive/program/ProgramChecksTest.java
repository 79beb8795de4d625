package stackside.derive.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stackside.derive.Edited;
import stackside.model.PedalColour;

final class ProgramChecksTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String HEADER =
      """
      === program-readings.csv
      +asset,date,slot,shown-as,socket,pedal,mode,level,limit,initials
      """;
  private static final String SLOT_3 =
      HEADER
          + """
          +EQ-1,2026-11-04,3,EMR R,mono-1,yellow,pulsed-cut,2,60 W,AP
          +EQ-1,2026-11-04,3,EMR R,mono-1,blue,brisk,1,40 W,AP
          """;

  private static ProgramCheck check(String patch, int slot) {
    return check(patch, slot, DAY);
  }

  private static ProgramCheck check(String patch, int slot, LocalDate day) {
    return ProgramChecks.onDay(Edited.base(patch), day).all().stream()
        .filter(each -> each.program().slot().value() == slot)
        .filter(each -> each.asset().id().slug().equals("EQ-1"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyProgramOnEveryAssetThatUsesItIsChecked() {
    List<ProgramCheck> all = ProgramChecks.onDay(Edited.base(""), DAY).all();
    assertThat(all)
        .extracting(each -> each.asset().id().slug() + " " + each.program().slot().value())
        .containsExactly("EQ-1 3", "EQ-1 4", "EQ-1 7", "EQ-2 2");
    assertThat(all).allMatch(each -> each.verdict() == ProgramCheck.Verdict.NEVER_READ);
  }

  @Test
  void aReadingThatAgreesInEveryFieldAgrees() {
    assertThat(check(SLOT_3, 3).verdict()).isEqualTo(ProgramCheck.Verdict.AGREES);
  }

  @ParameterizedTest
  @CsvSource({
    "'3,EMR R,mono-1,yellow,pulsed-cut,2,60 W','3,EMR,mono-1,yellow,pulsed-cut,2,60 W',SHOWN_AS,EMR R,EMR",
    "'3,EMR R,mono-1,yellow,pulsed-cut,2,60 W','3,EMR R,mono-2,yellow,pulsed-cut,2,60 W',SOCKET,mono-1,mono-2",
    "'3,EMR R,mono-1,yellow,pulsed-cut,2,60 W','3,EMR R,mono-1,yellow,brisk,2,60 W',MODE,pulsed-cut,brisk",
    "'3,EMR R,mono-1,yellow,pulsed-cut,2,60 W','3,EMR R,mono-1,yellow,pulsed-cut,3,60 W',LEVEL,2,3",
    "'3,EMR R,mono-1,blue,brisk,1,40 W','3,EMR R,mono-1,blue,brisk,1,45 W',LIMIT,40 W,45 W"
  })
  void oneFieldThatDiffersIsSaidOnce(
      String right, String wrong, Mismatch.Field field, String approved, String read) {
    ProgramCheck check = check(SLOT_3.replace(right, wrong), 3);
    assertThat(check.verdict()).isEqualTo(ProgramCheck.Verdict.DIFFERS);
    assertThat(check.mismatches())
        .singleElement()
        .satisfies(
            mismatch -> {
              assertThat(mismatch.field()).isEqualTo(field);
              assertThat(mismatch.approved()).contains(approved);
              assertThat(mismatch.read()).contains(read);
              assertThat(mismatch.readAt().file()).isEqualTo("program-readings.csv");
              assertThat(mismatch.approvedAt().file()).isEqualTo("profiles/arrowgrass.yaml");
            });
  }

  @Test
  void aNameThatDiffersOnBothPedalsIsSaidOnce() {
    ProgramCheck check = check(SLOT_3.replace("EMR R", "Old"), 3);
    assertThat(check.mismatches()).hasSize(1);
  }

  @Test
  void aPedalThatWasNotReadIsSaid() {
    String yellowOnly = SLOT_3.lines().limit(3).reduce("", (a, b) -> a + b + "\n");
    assertThat(check(yellowOnly, 3).mismatches())
        .singleElement()
        .satisfies(
            mismatch -> {
              assertThat(mismatch.field()).isEqualTo(Mismatch.Field.PEDAL_NOT_READ);
              assertThat(mismatch.pedal()).contains(PedalColour.BLUE);
            });
  }

  @Test
  void aPedalThatIsAssignedInTheMachineOnlyDiffers() {
    ProgramCheck check =
        check(
            HEADER
                + """
                +EQ-1,2026-11-04,7,BIPOLAR,bi,yellow,pulsed-cut,2,60 W,AP
                +EQ-1,2026-11-04,7,BIPOLAR,bi,blue,bipolar,low,20 W,AP
                """,
            7);
    assertThat(check.mismatches())
        .singleElement()
        .satisfies(
            mismatch -> {
              assertThat(mismatch.field()).isEqualTo(Mismatch.Field.MODE);
              assertThat(mismatch.approved()).isEmpty();
              assertThat(mismatch.read()).contains("pulsed-cut");
            });
  }

  @Test
  void twoSlotsThatHoldEachOthersProgramAreSwapped() {
    String swapped =
        HEADER
            + """
            +EQ-1,2026-11-04,3,EMR L,mono-1,yellow,pulsed-cut,2,80 W,AP
            +EQ-1,2026-11-04,3,EMR L,mono-1,blue,brisk,1,45 W,AP
            +EQ-1,2026-11-04,4,EMR R,mono-1,yellow,pulsed-cut,2,60 W,AP
            +EQ-1,2026-11-04,4,EMR R,mono-1,blue,brisk,1,40 W,AP
            """;
    assertThat(check(swapped, 3).swappedWith()).contains(4);
    assertThat(check(swapped, 4).swappedWith()).contains(3);
    assertThat(
            check(
                    swapped.replace(
                        "4,EMR R,mono-1,blue,brisk,1,40 W", "4,EMR R,mono-1,blue,brisk,1,50 W"),
                    3)
                .swappedWith())
        .isEmpty();
    assertThat(check(SLOT_3.replace("EMR R", "Old"), 3).swappedWith()).isEmpty();
  }

  @Test
  void theLastReadingCounts() {
    String twice =
        SLOT_3
            + """
            +EQ-1,2026-11-10,3,EMR R,mono-1,yellow,pulsed-cut,3,60 W,AP
            +EQ-1,2026-11-10,3,EMR R,mono-1,blue,brisk,1,40 W,AP
            """;
    assertThat(check(twice, 3).verdict()).isEqualTo(ProgramCheck.Verdict.DIFFERS);
    assertThat(check(twice, 3, LocalDate.of(2026, 11, 9)).verdict())
        .isEqualTo(ProgramCheck.Verdict.AGREES);
    assertThat(check(twice, 3, LocalDate.of(2026, 11, 3)).verdict())
        .isEqualTo(ProgramCheck.Verdict.NEVER_READ);
  }

  @ParameterizedTest
  @CsvSource({
    "service,2026-11-05,NO_LONGER_COUNTS",
    "software update,2026-11-05,NO_LONGER_COUNTS",
    "swap,2026-11-05,NO_LONGER_COUNTS",
    "service,2026-11-04,AGREES",
    "service,2026-11-03,AGREES",
    "service,2026-11-26,AGREES"
  })
  void aReadingOlderThanTheLastEventNoLongerCounts(
      String event, String date, ProgramCheck.Verdict verdict) {
    ProgramCheck check =
        check(
            SLOT_3
                + """
                === service-events.csv
                +asset,date,event,software-after,note
                +EQ-2,2026-11-06,service,,
                +EQ-1,%s,%s,,
                """
                    .formatted(date, event),
            3);
    assertThat(check.verdict()).isEqualTo(verdict);
    Optional<String> ended =
        check.reading().orElseThrow().endedBy().map(each -> each.event().value().spoken());
    assertThat(ended.isPresent()).isEqualTo(verdict == ProgramCheck.Verdict.NO_LONGER_COUNTS);
    ended.ifPresent(words -> assertThat(words).isEqualTo(event));
  }

  @Test
  void theLatestEventIsNamed() {
    ProgramCheck check =
        check(
            SLOT_3
                + """
                === service-events.csv
                +asset,date,event,software-after,note
                +EQ-1,2026-11-20,swap,,
                +EQ-1,2026-11-10,service,,
                """,
            3);
    assertThat(check.reading().orElseThrow().endedBy().orElseThrow().event().value().word())
        .isEqualTo("swap");
    assertThat(check.mismatches()).isEmpty();
  }
}
