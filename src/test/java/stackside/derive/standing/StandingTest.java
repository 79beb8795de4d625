package stackside.derive.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stackside.derive.Edited;
import stackside.model.Kind;
import stackside.model.SignedKind;
import stackside.model.ThingId;

final class StandingTest {
  private static final ThingId SMALL = new ThingId(Kind.PROFILE, "arrowgrass-small");
  private static final String TODAY = "aaaa-0001";
  private static final String EARLIER = "bbbb-0002";
  private static final String TWO_ROLES =
      """
      === unit.yaml
      -  profile: [lead-endoscopist]
      +  profile: [lead-endoscopist, medical-physics]
      """;
  private static final String LEDGER =
      """
      === approvals.csv
      +date,thing,fingerprint,role,initials,seal
      """;

  private static String signed(String date, String fingerprint, String role) {
    return "+%s,profile:arrowgrass-small,%s,%s,EF,cccc-0003\n".formatted(date, fingerprint, role);
  }

  private static Standing standing(String patch, String on) {
    return Standing.of(Edited.base(patch), LocalDate.parse(on), thing -> TODAY);
  }

  private static SignatureStanding small(String patch, String on) {
    return standing(patch, on).signaturesOf(SMALL).orElseThrow();
  }

  @Test
  void everythingThatIsSignedStandsThere() {
    Standing standing = standing("", "2026-11-25");
    assertThat(standing.signatures())
        .extracting(SignatureStanding::kind)
        .contains(SignedKind.values());
    assertThat(standing.signatures())
        .allMatch(each -> each.state() == SignatureStanding.State.UNSIGNED);
    assertThat(standing.signaturesOf(new ThingId(Kind.SITE, "caecum"))).isEmpty();
    assertThat(standing.on()).isEqualTo(LocalDate.of(2026, 11, 25));
  }

  @Test
  void allRolesHaveSignedWhatItSaysToday() {
    String patch =
        TWO_ROLES
            + LEDGER
            + signed("2026-03-01", TODAY, "lead-endoscopist")
            + signed("2026-05-01", TODAY, "medical-physics");
    SignatureStanding standing = small(patch, "2027-03-01");
    assertThat(standing.state()).isEqualTo(SignatureStanding.State.SIGNED);
    assertThat(standing.reviewBy()).contains(LocalDate.of(2027, 3, 1));
    assertThat(standing.missing()).isEmpty();
    assertThat(small(patch, "2027-03-02").state())
        .isEqualTo(SignatureStanding.State.REVIEW_OVERDUE);
  }

  @Test
  void oneRoleIsMissing() {
    String patch = TWO_ROLES + LEDGER + signed("2026-03-01", TODAY, "lead-endoscopist");
    SignatureStanding standing = small(patch, "2026-11-25");
    assertThat(standing.state()).isEqualTo(SignatureStanding.State.UNSIGNED);
    assertThat(standing.reviewBy()).isEmpty();
    assertThat(standing.missing())
        .extracting(wanted -> wanted.role().value().id().slug())
        .containsExactly("medical-physics");
  }

  @Test
  void whatWasSignedEarlierIsOutdated() {
    String patch =
        LEDGER
            + signed("2026-03-01", EARLIER, "lead-endoscopist")
            + signed("2026-02-01", EARLIER, "lead-endoscopist");
    SignatureStanding standing = small(patch, "2026-11-25");
    assertThat(standing.state()).isEqualTo(SignatureStanding.State.CHANGED_SINCE);
    assertThat(standing.wanted().get(0).given()).isEmpty();
    assertThat(standing.wanted().get(0).outdated().orElseThrow().date().value())
        .isEqualTo(LocalDate.of(2026, 3, 1));
  }

  @Test
  void theLatestSignatureCountsAndALaterOneIsNotYetGiven() {
    String patch =
        LEDGER
            + signed("2026-03-01", TODAY, "lead-endoscopist")
            + signed("2026-09-01", TODAY, "lead-endoscopist");
    assertThat(small(patch, "2026-11-25").reviewBy()).contains(LocalDate.of(2027, 9, 1));
    assertThat(small(patch, "2026-08-31").reviewBy()).contains(LocalDate.of(2027, 3, 1));
    assertThat(small(patch, "2026-02-28").state()).isEqualTo(SignatureStanding.State.UNSIGNED);
  }

  @Test
  void aKindThatNobodySignsIsSigned() {
    String patch =
        """
        === unit.yaml
        -  room: [lead-nurse]
        """;
    assertThat(
            standing(patch, "2026-11-25")
                .signaturesOf(new ThingId(Kind.ROOM, "room-1"))
                .orElseThrow()
                .state())
        .isEqualTo(SignatureStanding.State.SIGNED);
  }

  private static final ThingId POLICIES = new ThingId(Kind.UNIT, "policies");
  private static final ThingId PHYSICS = new ThingId(Kind.ROLE, "medical-physics");
  private static final String WITHOUT_PHYSICS =
      """
      === unit.yaml
      -  machine: [medical-physics]
      +  machine: [lead-nurse]
      === unit.yaml
      -  asset: [medical-physics]
      +  asset: [lead-nurse]
      """;

  private static List<String> missing(String patch, ThingId thing) {
    return standing(patch, "2026-11-25").signaturesOf(thing).orElseThrow().missing().stream()
        .map(each -> each.role().value().id().slug())
        .sorted()
        .toList();
  }

  @Test
  void whoeverSignsAnythingSignsThePolicies() {
    assertThat(missing("", POLICIES))
        .containsExactly("lead-endoscopist", "lead-nurse", "medical-physics");
    assertThat(missing(WITHOUT_PHYSICS, POLICIES))
        .containsExactly("lead-endoscopist", "lead-nurse");
  }

  @Test
  void eachRoleSignsWhatItSigns() {
    assertThat(missing("", PHYSICS)).containsExactly("medical-physics");
  }

  @Test
  void aRoleThatOnlyGetsAsked_signsNothing() {
    assertThat(standing(WITHOUT_PHYSICS, "2026-11-25").signaturesOf(PHYSICS)).isEmpty();
  }

  @Test
  void aRoleThatSignedEarlier_mustSignThatItSignsNoMore() {
    String patch =
        WITHOUT_PHYSICS
            + LEDGER
            + "+2026-03-01,role:medical-physics,%s,medical-physics,EF,cccc-0003%n"
                .formatted(EARLIER);
    assertThat(missing(patch, PHYSICS)).containsExactly("medical-physics");
    String agreed =
        patch
            + "+2026-04-01,role:medical-physics,%s,medical-physics,EF,cccc-0004%n".formatted(TODAY);
    assertThat(missing(agreed, PHYSICS)).isEmpty();
  }

  // --- output checks

  private static OutputCheckStanding soft(String rows, String on) {
    String patch =
        """
        === profiles/birch.yaml
        -      yellow: unassigned
        +      yellow: {mode: soft, limit: 80 W}
        === output-checks.csv
        +asset,date,mode,level,limit,load,watts,method,initials
        """;
    return standing(patch + rows, on).outputChecks().stream()
        .filter(each -> each.mode().id().local().equals("soft"))
        .findFirst()
        .orElseThrow();
  }

  private static String measured(String date, String watts) {
    return "+EQ-2,%s,soft,,80 W,500 ohm,%s,analyser,AP\n".formatted(date, watts);
  }

  @Test
  void everyModeInUseWantsItsCheckAndArgonDoesNot() {
    assertThat(standing("", "2026-11-25").outputChecks())
        .extracting(each -> each.asset().id().slug() + " " + each.mode().id().local())
        .containsExactly("EQ-1 bipolar", "EQ-1 brisk", "EQ-1 pulsed-cut");
    assertThat(standing("", "2026-11-25").outputChecks())
        .allMatch(each -> each.state() == OutputCheckStanding.State.NEVER_CHECKED);
  }

  @ParameterizedTest
  @CsvSource({
    "36 W,2026-11-25,CHECKED",
    "36 W,2027-03-02,CHECKED",
    "36 W,2027-03-03,OVERDUE",
    "80 W,2026-11-25,OUT_OF_TOLERANCE",
    "20 W,2026-11-25,OUT_OF_TOLERANCE",
    "36 W,2026-03-01,NEVER_CHECKED"
  })
  void checkedWithinTheIntervalAndTheTolerance(
      String watts, String on, OutputCheckStanding.State state) {
    assertThat(soft(measured("2026-03-02", watts), on).state()).isEqualTo(state);
  }

  @Test
  void onlyTheLatestDayCounts() {
    OutputCheckStanding standing =
        soft(measured("2026-03-02", "80 W") + measured("2026-04-02", "36 W"), "2026-11-25");
    assertThat(standing.state()).isEqualTo(OutputCheckStanding.State.CHECKED);
    assertThat(standing.last()).hasSize(1);
    assertThat(standing.dueBy()).contains(LocalDate.of(2027, 4, 2));
  }

  @ParameterizedTest
  @CsvSource({"2026-03-03,NO_LONGER_COUNTS", "2026-03-02,CHECKED", "2026-11-26,CHECKED"})
  void anEventSinceEndsTheCheck(String date, OutputCheckStanding.State state) {
    OutputCheckStanding standing =
        soft(
            measured("2026-03-02", "36 W")
                + """
                === service-events.csv
                +asset,date,event,software-after,note
                +EQ-2,%s,service,,
                """
                    .formatted(date),
            "2026-11-25");
    assertThat(standing.state()).isEqualTo(state);
    assertThat(standing.endedBy().isPresent())
        .isEqualTo(state == OutputCheckStanding.State.NO_LONGER_COUNTS);
  }

  @Test
  void storedProgramsStandAsOfTheDay() {
    assertThat(standing("", "2026-11-25").programs().all()).hasSize(4);
  }
}
