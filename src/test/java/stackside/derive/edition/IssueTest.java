package stackside.derive.edition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stackside.derive.edition.Decision.Outcome;
import stackside.derive.signed.Fingerprint;
import stackside.derive.signed.Json;

/** What an issue does with single cards, and that its register cannot be touched unnoticed. */
final class IssueTest {

  private static final LocalDate FIRST = LocalDate.of(2026, 3, 1);
  private static final LocalDate LATER = LocalDate.of(2026, 4, 1);

  private static Candidate clean(String name, String says) {
    return candidate(name, says, List.of(), List.of());
  }

  private static Candidate candidate(
      String name, String says, List<String> errors, List<String> unsettled) {
    return new Candidate(
        name,
        "c" + name,
        "Room: " + name,
        "A-1",
        "cards/" + name + ".pdf",
        2,
        says,
        Optional.empty(),
        List.of(),
        errors,
        unsettled);
  }

  private static Register issued(Register before, LocalDate on, Candidate... candidates) {
    return Issue.of(before, on, List.of(candidates)).register(Optional.empty(), List.of());
  }

  private static Decision decision(Register before, Candidate candidate) {
    return Issue.of(before, LATER, List.of(candidate)).decisions().get(0);
  }

  private static final Register BEFORE =
      issued(Register.none(), FIRST, clean("a", "says 1"), clean("b", "says 2"));

  @Test
  void newCard_isTheFirstEdition() {
    assertThat(BEFORE.card("a"))
        .get()
        .satisfies(card -> assertThat(card.edition()).isEqualTo(1))
        .satisfies(card -> assertThat(card.since()).isEqualTo(FIRST));
  }

  @Test
  void sameWords_areTheSameEditionWithItsOwnDay() {
    Decision decision = decision(BEFORE, clean("a", "says 1"));
    assertThat(decision.outcome()).isEqualTo(Outcome.SAME_EDITION);
    assertThat(decision.entry().orElseThrow().since()).isEqualTo(FIRST);
    Register after = issued(BEFORE, LATER, clean("a", "says 1"), clean("b", "says 2"));
    assertThat(after.last().orElseThrow().cards()).isEmpty();
    assertThat(after.cards()).isEqualTo(BEFORE.cards());
  }

  @Test
  void otherWords_areTheNextEdition() {
    Decision decision = decision(BEFORE, clean("a", "says 3"));
    assertThat(decision.outcome()).isEqualTo(Outcome.NEXT_EDITION);
    assertThat(decision.entry().orElseThrow().edition()).isEqualTo(2);
  }

  @Test
  void unsignedChange_leavesTheLastEditionUp() {
    assertThat(decision(BEFORE, candidate("a", "says 3", List.of(), List.of("unsigned"))).outcome())
        .isEqualTo(Outcome.STAYS);
    assertThat(decision(BEFORE, candidate("a", "says 3", List.of("wrong"), List.of())).outcome())
        .isEqualTo(Outcome.STAYS);
  }

  @Test
  void hangingCardThatIsKnownToBeWrong_comesDown() {
    Decision decision = decision(BEFORE, candidate("a", "says 1", List.of("wrong"), List.of()));
    assertThat(decision.outcome()).isEqualTo(Outcome.OUT_OF_USE);
    assertThat(decision.reason()).isEqualTo("wrong");
  }

  @Test
  void neverIssuedAndNotClean_isNotYet() {
    assertThat(decision(BEFORE, candidate("x", "says", List.of(), List.of("unsigned"))).outcome())
        .isEqualTo(Outcome.NOT_YET);
  }

  @Test
  void cardThatTheContentHasNoMore_comesDown() {
    Issue issue = Issue.of(BEFORE, LATER, List.of(clean("a", "says 1")));
    assertThat(issue.decisions().get(1).name()).isEqualTo("b");
    assertThat(issue.decisions().get(1).outcome()).isEqualTo(Outcome.OUT_OF_USE);
  }

  @Test
  void troubleOfOneCard_blocksNoOther() {
    Issue issue =
        Issue.of(
            BEFORE,
            LATER,
            List.of(candidate("a", "says 3", List.of("wrong"), List.of()), clean("b", "says 4")));
    assertThat(issue.decisions().stream().map(Decision::outcome))
        .containsExactly(Outcome.STAYS, Outcome.NEXT_EDITION);
  }

  @Test
  void withdrawnCard_comesBackOnlyByAnIssueAndAsTheNextEdition() {
    CardEntry down = BEFORE.card("a").orElseThrow().outOfUse("smoke");
    Register withdrawn =
        BEFORE.with(LATER, Optional.of("lead-nurse"), Optional.empty(), List.of(down), List.of());
    assertThat(withdrawn.card("a").orElseThrow().current()).isFalse();
    assertThat(decision(withdrawn, candidate("a", "says 1", List.of(), List.of("x"))).outcome())
        .isEqualTo(Outcome.STAYS_DOWN);
    Decision back = decision(withdrawn, clean("a", "says 1"));
    assertThat(back.outcome()).isEqualTo(Outcome.NEXT_EDITION);
    assertThat(back.entry().orElseThrow().edition()).isEqualTo(2);
  }

  @Test
  void drafts_bearADecimalAfterTheLastEdition() {
    Editions.Edition draft = Editions.drafts(BEFORE, LATER).of("a", LATER);
    assertThat(draft.words()).isEqualTo("1.1");
    assertThat(draft.since()).isEqualTo(LATER);
    assertThat(Editions.none().of("a", LATER).words()).isEqualTo("0.1");
  }

  private static final Register REGISTER =
      issued(BEFORE, LATER, clean("a", "says 5"), clean("b", "says 2"))
          .with(
              LATER,
              Optional.of("lead-nurse"),
              Optional.of(Fingerprint.of(Json.text("head"))),
              List.of(BEFORE.card("b").orElseThrow().outOfUse("burnt")),
              List.of());

  @Test
  void registerReadsBackAsItself() throws DamagedRegister {
    assertThat(Register.read(REGISTER.text())).isEqualTo(REGISTER);
    assertThat(REGISTER.entries()).hasSize(3);
    assertThat(Register.read(REGISTER.before().text())).isEqualTo(REGISTER.before());
  }

  @Test
  void everyChangedByteOfTheRegister_isNoticed() {
    byte[] whole = REGISTER.text().getBytes(StandardCharsets.UTF_8);
    int cases = 0;
    for (int at = 0; at < whole.length; at++) {
      for (int bit = 0; bit < 7; bit++) {
        byte[] tampered = whole.clone();
        tampered[at] ^= (byte) (1 << bit);
        String text = new String(tampered, StandardCharsets.UTF_8);
        assertThatThrownBy(() -> Register.read(text))
            .as("byte %d, bit %d", at, bit)
            .isInstanceOf(DamagedRegister.class);
        cases++;
      }
    }
    System.out.println("register: " + cases + " changed bytes, all noticed");
  }

  @Test
  void otherFormat_isNamed() {
    assertThatThrownBy(() -> Register.read("{\"entries\":[],\"format\":2}\n"))
        .hasMessageContaining("format that this version does not know");
    assertThatThrownBy(() -> Register.read("")).hasMessageContaining("cannot be read");
  }
}
