package stackside.derive.edition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import stackside.derive.edition.Decision.Outcome;
import stackside.derive.signed.Approvals;
import stackside.derive.signed.Fingerprint;
import stackside.derive.signed.Json;
import stackside.derive.signed.Ledger;
import stackside.model.Kind;
import stackside.model.ThingId;

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
        "room-1",
        "A-1",
        "cards/" + name + ".pdf",
        2,
        says,
        Optional.empty(),
        Optional.of(new Approval(FIRST, List.of("lead-nurse"))),
        List.of(),
        errors,
        unsettled,
        List.of());
  }

  private static Books issued(Books before, LocalDate on, Candidate... candidates) {
    return issued(before, Issue.of(before, on, Found.of(List.of(candidates))));
  }

  private static Books issued(Books before, Issue issue) {
    Json.Members manifest = Books.manifest(Map.of());
    return before.issued(before.entry(issue, manifest, List.of()), manifest);
  }

  private static Decision decision(Books before, Candidate candidate) {
    return Issue.of(before, LATER, Found.of(List.of(candidate))).decisions().get(0);
  }

  private static Books withdrawn(Books before, String name, String why) {
    CardEntry card = before.register().card(name).orElseThrow();
    Stop stop = new Stop(Stop.card(name), why, Optional.of("lead-nurse"), LATER);
    return before.with(
        before.withdrawal(LATER, "lead-nurse", List.of(card.outOfUse(why)), stop), "NN");
  }

  private static Books lifted(Books before, String name) {
    return before.with(
        before.lifting(LATER, "medical-physics", List.of(Stop.card(name)), "mended"), "AP");
  }

  private static final Books NONE = new Books(Approvals.none(), Register.none());
  private static final Books BEFORE =
      issued(NONE, FIRST, clean("a", "says 1"), clean("b", "says 2"));

  @Test
  void newCard_isTheFirstEdition() {
    assertThat(BEFORE.register().card("a"))
        .get()
        .satisfies(card -> assertThat(card.edition()).isEqualTo(1))
        .satisfies(card -> assertThat(card.since()).isEqualTo(FIRST));
  }

  @Test
  void sameWords_areTheSameEditionWithItsOwnDay() {
    Decision decision = decision(BEFORE, clean("a", "says 1"));
    assertThat(decision.outcome()).isEqualTo(Outcome.SAME_EDITION);
    assertThat(decision.entry().orElseThrow().since()).isEqualTo(FIRST);
    Register after = issued(BEFORE, LATER, clean("a", "says 1"), clean("b", "says 2")).register();
    assertThat(after.last().orElseThrow().cards()).isEmpty();
    assertThat(after.cards()).isEqualTo(BEFORE.register().cards());
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
    Issue issue = Issue.of(BEFORE, LATER, Found.of(List.of(clean("a", "says 1"))));
    assertThat(issue.decisions().get(1).name()).isEqualTo("b");
    assertThat(issue.decisions().get(1).outcome()).isEqualTo(Outcome.OUT_OF_USE);
  }

  @Test
  void troubleOfOneCard_blocksNoOther() {
    Issue issue =
        Issue.of(
            BEFORE,
            LATER,
            Found.of(
                List.of(
                    candidate("a", "says 3", List.of("wrong"), List.of()), clean("b", "says 4"))));
    assertThat(issue.decisions().stream().map(Decision::outcome))
        .containsExactly(Outcome.STAYS, Outcome.NEXT_EDITION);
  }

  @Test
  void withdrawnCard_staysDownThroughEveryIssueUntilSomebodyLiftsIt() {
    Books withdrawn = withdrawn(BEFORE, "a", "smoke");
    assertThat(withdrawn.register().card("a").orElseThrow().current()).isFalse();
    assertThat(decision(withdrawn, clean("a", "says 1")).outcome()).isEqualTo(Outcome.STAYS_DOWN);
    assertThat(decision(withdrawn, clean("a", "says 3")).outcome()).isEqualTo(Outcome.STAYS_DOWN);
    Books lifted = lifted(withdrawn, "a");
    assertThat(decision(lifted, candidate("a", "says 1", List.of(), List.of("x"))).outcome())
        .isEqualTo(Outcome.STAYS_DOWN);
    Decision back = decision(lifted, clean("a", "says 1"));
    assertThat(back.outcome()).isEqualTo(Outcome.NEXT_EDITION);
    assertThat(back.entry().orElseThrow().edition()).isEqualTo(2);
  }

  @Test
  void withdrawnCard_doesNotComeBackUnderAnotherName() {
    Books withdrawn = withdrawn(BEFORE, "a", "smoke");
    Issue issue = Issue.of(withdrawn, LATER, Found.of(List.of(clean("a-renamed", "says 1"))));
    assertThat(issue.decisions().get(0).outcome()).isEqualTo(Outcome.NOT_YET);
    assertThat(issue.decisions().get(0).reason()).isEqualTo("smoke");
  }

  private static Found found(Optional<Set<String>> inUse, Map<String, String> bad, Candidate... c) {
    return new Found(List.of(c), inUse, new TreeMap<>(bad), new TreeMap<>(), Optional.empty());
  }

  @Test
  void badRecord_takesTheGeneratorDownUntilItIsLifted() {
    Issue bad =
        Issue.of(
            BEFORE,
            LATER,
            found(
                Optional.empty(),
                Map.of("A-1", "slot 3 differs"),
                clean("a", "says 1"),
                clean("b", "says 2")));
    assertThat(bad.decisions()).extracting(Decision::outcome).containsOnly(Outcome.OUT_OF_USE);
    Books after = issued(BEFORE, bad);
    assertThat(after.register().stops()).containsOnlyKeys("asset:A-1");
    assertThat(decision(after, clean("a", "says 1")).outcome()).isEqualTo(Outcome.STAYS_DOWN);
    Books lifted =
        after.with(after.lifting(LATER, "medical-physics", List.of("asset:A-1"), "read"), "AP");
    assertThat(decision(lifted, clean("a", "says 1")).outcome()).isEqualTo(Outcome.NEXT_EDITION);
  }

  @Test
  void generatorThatIsNotInUse_goesUnsignedAndComesBackSigned() {
    Issue away =
        Issue.of(BEFORE, LATER, found(Optional.of(Set.of()), Map.of(), clean("a", "says 1")));
    assertThat(away.decisions()).extracting(Decision::outcome).containsOnly(Outcome.OUT_OF_USE);
    Books after = issued(BEFORE, away);
    assertThat(decision(after, clean("a", "says 1")).outcome()).isEqualTo(Outcome.STAYS_DOWN);
    Fingerprint facts = Fingerprint.of(Json.text("in use"));
    Books signed =
        new Books(
            after
                .approvals()
                .with(
                    new Ledger.Decision(
                        LATER,
                        new ThingId(Kind.ASSET, "A-1"),
                        Optional.of(facts),
                        facts,
                        "medical-physics",
                        "AP")),
            after.register());
    assertThat(decision(signed, clean("a", "says 1")).outcome()).isEqualTo(Outcome.NEXT_EDITION);
  }

  @Test
  void drafts_bearADecimalAfterTheLastEdition() {
    Editions.Edition draft = Editions.drafts(BEFORE.register(), LATER).of("a", LATER);
    assertThat(draft.words()).isEqualTo("1.1");
    assertThat(draft.since()).isEqualTo(LATER);
    assertThat(Editions.none().of("a", LATER).words()).isEqualTo("0.1");
  }

  private static final Register REGISTER =
      lifted(
              withdrawn(
                  issued(BEFORE, LATER, clean("a", "says 5"), clean("b", "says 2")), "b", "burnt"),
              "b")
          .register();

  @Test
  void registerReadsBackAsItself() throws DamagedRegister {
    assertThat(Register.read(REGISTER.text())).isEqualTo(REGISTER);
    assertThat(REGISTER.entries()).hasSize(4);
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
    assertThatThrownBy(() -> Register.read("{\"entries\":[],\"format\":1}\n"))
        .hasMessageContaining("format that this version does not know");
    assertThatThrownBy(() -> Register.read("")).hasMessageContaining("cannot be read");
  }
}
