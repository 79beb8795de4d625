package stackside.derive.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stackside.derive.Edited;
import stackside.derive.signed.Approvals;
import stackside.derive.signed.Fingerprint;
import stackside.derive.signed.Json;
import stackside.derive.signed.Ledger;
import stackside.derive.signed.SignedFacts;
import stackside.model.Kind;
import stackside.model.SignedKind;
import stackside.model.ThingId;
import stackside.model.Unit;

final class StandingTest {
  private static final ThingId SMALL = new ThingId(Kind.PROFILE, "arrowgrass-small");
  private static final ThingId POLICIES = new ThingId(Kind.UNIT, "policies");
  private static final String CHANGED =
      """
      === profiles/arrowgrass.yaml
      -    cold: Cold snare.
      +    cold: Cold snare, twice.
      """;
  private static final String TWO_ROLES =
      """
      === unit.yaml
      -  profile: [lead-endoscopist]
      +  profile: [lead-endoscopist, medical-physics]
      """;
  private static final String WITHOUT_PHYSICS =
      """
      === unit.yaml
      -  machine: [medical-physics]
      +  machine: [lead-nurse]
      === unit.yaml
      -  asset: [medical-physics]
      +  asset: [lead-nurse]
      """;
  private static final Fingerprint SHEET = Fingerprint.of(Json.text("sheet"));

  private final Unit unit = Edited.base("");
  private Approvals approvals = Approvals.none();

  private static Standing standing(String patch, String on) {
    return Standing.of(Edited.base(patch), Approvals.none(), LocalDate.parse(on));
  }

  private Standing now(Unit there, String on) {
    return Standing.of(there, approvals, LocalDate.parse(on));
  }

  private SignatureStanding small(Unit there, String on) {
    return now(there, on).signaturesOf(SMALL).orElseThrow();
  }

  /** A role signs a thing as it stands in a unit, or that it is gone from it. */
  private void sign(String day, ThingId thing, Unit there, String role) {
    Optional<SignedFacts> facts = there.find(thing).flatMap(each -> SignedFacts.of(there, each));
    Ledger.Decision decision =
        new Ledger.Decision(
            LocalDate.parse(day), thing, facts.map(SignedFacts::fingerprint), SHEET, role, "EF");
    approvals =
        facts
            .map(each -> approvals.with(decision, each.json()))
            .orElseGet(() -> approvals.with(decision));
  }

  private static List<String> missing(SignatureStanding standing) {
    return standing.missing().stream().map(each -> each.role().id().slug()).sorted().toList();
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
    Unit two = Edited.base(TWO_ROLES);
    sign("2026-03-01", SMALL, two, "lead-endoscopist");
    assertThat(small(two, "2026-11-25").state()).isEqualTo(SignatureStanding.State.UNSIGNED);
    assertThat(missing(small(two, "2026-11-25"))).containsExactly("medical-physics");
    sign("2026-05-01", SMALL, two, "medical-physics");
    SignatureStanding standing = small(two, "2027-03-01");
    assertThat(standing.state()).isEqualTo(SignatureStanding.State.SIGNED);
    assertThat(standing.reviewBy()).contains(LocalDate.of(2027, 3, 1));
    assertThat(standing.missing()).isEmpty();
    assertThat(small(two, "2027-03-02").state()).isEqualTo(SignatureStanding.State.REVIEW_OVERDUE);
  }

  @Test
  void whatIsSignedAgainIsReviewed() {
    sign("2026-03-01", SMALL, unit, "lead-endoscopist");
    assertThat(small(unit, "2027-03-02").state()).isEqualTo(SignatureStanding.State.REVIEW_OVERDUE);
    sign("2027-03-02", SMALL, unit, "lead-endoscopist");
    assertThat(small(unit, "2027-03-02").state()).isEqualTo(SignatureStanding.State.SIGNED);
    assertThat(small(unit, "2027-03-02").reviewBy()).contains(LocalDate.of(2028, 3, 2));
    assertThat(small(unit, "2026-08-31").reviewBy()).contains(LocalDate.of(2027, 3, 1));
    assertThat(small(unit, "2026-02-28").state()).isEqualTo(SignatureStanding.State.UNSIGNED);
  }

  @Test
  void onlyTheLatestDecisionCounts_soAReturnMustBeSigned() {
    Unit changed = Edited.base(CHANGED);
    sign("2026-03-01", SMALL, unit, "lead-endoscopist");
    sign("2026-04-01", SMALL, changed, "lead-endoscopist");
    SignatureStanding back = small(unit, "2026-11-25");
    assertThat(back.state()).isEqualTo(SignatureStanding.State.CHANGED_SINCE);
    assertThat(back.wanted().get(0).given()).isEmpty();
    assertThat(back.wanted().get(0).outdated().orElseThrow().day())
        .isEqualTo(LocalDate.of(2026, 4, 1));
    sign("2026-05-01", SMALL, unit, "lead-endoscopist");
    assertThat(small(unit, "2026-11-25").state()).isEqualTo(SignatureStanding.State.SIGNED);
  }

  @Test
  void aDeletionIsADecisionToo() {
    Unit without =
        Edited.base(
            """
            === without checklists/set-up.yaml
            """);
    ThingId list = unit.checklists().get(0).id();
    sign("2026-03-01", list, unit, "lead-nurse");
    assertThat(now(unit, "2026-11-25").gone()).isEmpty();
    assertThat(now(without, "2026-11-25").gone())
        .singleElement()
        .satisfies(gone -> assertThat(gone.thing()).isEqualTo(list))
        .satisfies(gone -> assertThat(gone.missing()).hasSize(1));
    sign("2026-04-01", list, without, "lead-nurse");
    assertThat(now(without, "2026-11-25").gone()).isEmpty();
    assertThat(now(unit, "2026-11-25").signaturesOf(list).orElseThrow().state())
        .isEqualTo(SignatureStanding.State.CHANGED_SINCE);
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

  // --- who signs

  private SignatureStanding policies(Unit there) {
    return now(there, "2026-11-25").signaturesOf(POLICIES).orElseThrow();
  }

  @Test
  void whoeverSignsAnythingSignsThePolicies() {
    assertThat(missing(policies(unit)))
        .containsExactly("lead-endoscopist", "lead-nurse", "medical-physics");
    assertThat(missing(policies(Edited.base(WITHOUT_PHYSICS))))
        .containsExactly("lead-endoscopist", "lead-nurse");
  }

  @Test
  void whoSignsFollowsFromThePoliciesInForce_neverFromEditedOnes() {
    for (String role : List.of("lead-nurse", "lead-endoscopist", "medical-physics")) {
      sign("2026-03-01", POLICIES, unit, role);
    }
    Unit edited = Edited.base(WITHOUT_PHYSICS);
    ThingId machine = unit.machines().get(0).id();
    assertThat(missing(now(edited, "2026-11-25").signaturesOf(machine).orElseThrow()))
        .containsExactly("medical-physics");
    assertThat(missing(policies(edited)))
        .containsExactly("lead-endoscopist", "lead-nurse", "medical-physics");
    for (String role : List.of("lead-nurse", "lead-endoscopist")) {
      sign("2026-04-01", POLICIES, edited, role);
    }
    assertThat(missing(now(edited, "2026-11-25").signaturesOf(machine).orElseThrow()))
        .containsExactly("medical-physics");
    sign("2026-04-01", POLICIES, edited, "medical-physics");
    assertThat(missing(now(edited, "2026-11-25").signaturesOf(machine).orElseThrow()))
        .containsExactly("lead-nurse");
    assertThat(missing(policies(edited))).isEmpty();
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
