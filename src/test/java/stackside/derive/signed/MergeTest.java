package stackside.derive.signed;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stackside.model.Kind;
import stackside.model.ThingId;

/** Joins two copies of a ledger, or says who has to sign again. */
final class MergeTest {
  private static final Ledger COMMON =
      Ledger.empty().with(signed(1, "first", "lead-endoscopist")).with(issued(2, 1));

  private static Ledger.Decision signed(int day, String profile, String role) {
    return signed(day, profile, role, profile);
  }

  private static Ledger.Decision signed(int day, String profile, String role, String facts) {
    return new Ledger.Decision(
        LocalDate.of(2026, 3, day),
        new ThingId(Kind.PROFILE, profile),
        Optional.of(Fingerprint.of(Json.text(facts))),
        Fingerprint.of(Json.text("sheet")),
        role,
        "AB");
  }

  private static Ledger.Act issued(int day, int number) {
    return new Ledger.Act(
        LocalDate.of(2026, 3, day),
        Deed.ISSUE,
        number,
        Fingerprint.of(Json.text("entry " + number)),
        Optional.empty(),
        "",
        "");
  }

  @Test
  void twoWhoSignedAtTheSameTime_areJoinedByDay() {
    Ledger mine = COMMON.with(signed(5, "fifth", "lead-endoscopist"));
    Ledger theirs =
        COMMON.with(signed(4, "fifth", "medical-physics")).with(signed(6, "sixth", "lead-nurse"));
    Ledger joined = Merge.of(mine, theirs).joined().orElseThrow();
    assertThat(Ledger.read(joined.text()).problems()).isEmpty();
    assertThat(joined.lines().stream().map(Ledger.Line::entry).skip(2))
        .containsExactly(
            signed(4, "fifth", "medical-physics"),
            signed(5, "fifth", "lead-endoscopist"),
            signed(6, "sixth", "lead-nurse"));
    assertThat(joined.reaches(COMMON.head().orElseThrow())).isTrue();
    assertThat(Merge.of(joined, theirs).joined()).contains(joined);
  }

  @Test
  void aPairThatBothDecided_isSignedAgain() {
    Ledger mine = COMMON.with(signed(5, "fifth", "lead-nurse", "one"));
    Ledger theirs =
        COMMON.with(signed(4, "other", "lead-nurse")).with(signed(4, "fifth", "lead-nurse", "two"));
    Merge merge = Merge.of(mine, theirs);
    assertThat(merge.joined()).isEmpty();
    assertThat(merge.again())
        .containsExactly(new Merge.Again(5, signed(4, "fifth", "lead-nurse", "two")));
  }

  @Test
  void whatTheOtherIssuedSince_standsAsItWasSealed() {
    Ledger mine = COMMON.with(signed(7, "fifth", "lead-nurse"));
    Ledger theirs = COMMON.with(signed(5, "other", "lead-nurse")).with(issued(6, 2));
    Ledger joined = Merge.of(mine, theirs).joined().orElseThrow();
    assertThat(joined.reaches(theirs.head().orElseThrow())).isTrue();
    assertThat(joined.lines()).hasSize(5);
    assertThat(Ledger.read(joined.text()).problems()).isEmpty();
  }

  @Test
  void whatWasSignedBeforeAnIssueThatDidNotKnowIt_isSignedAgain() {
    Ledger mine = COMMON.with(signed(5, "fifth", "lead-nurse"));
    Ledger theirs = COMMON.with(issued(6, 2));
    assertThat(Merge.of(mine, theirs).joined()).isEmpty();
    assertThat(Merge.of(theirs, mine).again())
        .containsExactly(new Merge.Again(4, signed(5, "fifth", "lead-nurse")));
  }

  @Test
  void twoThatWereBothIssuedFrom_areNotJoined() {
    Merge merge = Merge.of(COMMON.with(issued(5, 2)), COMMON.with(issued(6, 2)));
    assertThat(merge.joined()).isEmpty();
    assertThat(merge.apart()).isTrue();
  }
}
