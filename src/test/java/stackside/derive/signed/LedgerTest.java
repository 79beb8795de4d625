package stackside.derive.signed;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stackside.model.Kind;
import stackside.model.ThingId;
import stackside.source.Problem;

/** Tampers with every byte and every line of a ledger. */
final class LedgerTest {

  private static Ledger.Decision entry(int day, String profile, String role) {
    return new Ledger.Decision(
        LocalDate.of(2026, 3, day),
        new ThingId(Kind.PROFILE, profile),
        profile.equals("second")
            ? Optional.empty()
            : Optional.of(Fingerprint.of(Json.text(profile))),
        Fingerprint.of(Json.text("sheet")),
        role,
        "ÄB");
  }

  private static Ledger.Act act(int day, Deed deed, int number) {
    return new Ledger.Act(
        LocalDate.of(2026, 3, day),
        deed,
        number,
        Fingerprint.of(Json.text("entry")),
        deed == Deed.ISSUE ? Optional.of(Fingerprint.of(Json.text("manifest"))) : Optional.empty(),
        deed == Deed.ISSUE ? "" : "lead-nurse",
        deed == Deed.ISSUE ? "" : "ÄB");
  }

  private static final Ledger LEDGER =
      Ledger.empty()
          .with(entry(1, "first", "lead-endoscopist"))
          .with(entry(1, "first", "medical-physics"))
          .with(entry(2, "second", "lead-endoscopist"))
          .with(act(2, Deed.ISSUE, 1))
          .with(act(3, Deed.WITHDRAWAL, 1))
          .with(entry(4, "third", "lead-endoscopist"));

  private static List<Problem> problems(String text) {
    return Ledger.read(text).problems();
  }

  private static String joined(List<String> lines) {
    return String.join("\n", lines) + "\n";
  }

  private static List<String> lines() {
    return new ArrayList<>(LEDGER.text().lines().toList());
  }

  @Test
  void readsBackWhatItWrote() {
    Ledger.Read read = Ledger.read(LEDGER.text());
    assertThat(read.problems()).isEmpty();
    assertThat(read.ledger()).isEqualTo(LEDGER);
    assertThat(Ledger.read(Ledger.empty().text()).problems()).isEmpty();
  }

  @Test
  void everyChangedByte_isNoticed() {
    byte[] whole = LEDGER.text().getBytes(StandardCharsets.UTF_8);
    int cases = 0;
    for (int at = 0; at < whole.length; at++) {
      for (int bit = 0; bit < 7; bit++) {
        byte[] tampered = whole.clone();
        tampered[at] ^= (byte) (1 << bit);
        assertThat(problems(new String(tampered, StandardCharsets.UTF_8)))
            .as("byte %d, bit %d", at, bit)
            .isNotEmpty();
        cases++;
      }
    }
    System.out.println("ledger: " + cases + " changed bytes, all noticed");
  }

  @Test
  void everyByteTakenOutOrPutIn_isNoticed() {
    String whole = LEDGER.text();
    for (int at = 0; at < whole.length(); at++) {
      assertThat(problems(whole.substring(0, at) + whole.substring(at + 1))).isNotEmpty();
      for (String more : List.of(" ", "\n", "\r", ",", "0", "\u0000", "\ufeff")) {
        assertThat(problems(whole.substring(0, at) + more + whole.substring(at)))
            .as("'%s' at %d", more, at)
            .isNotEmpty();
      }
    }
  }

  @Test
  void fileThatIsNoLedger_isOneProblemWithTheNumberOfItsLines() {
    assertThat(problems("x\n".repeat(5_000)))
        .hasSize(2)
        .last()
        .asString()
        .contains("the same is true of 4998 more lines");
  }

  @Test
  void everyLineTakenOutButTheLast_isNoticed() {
    for (int at = 0; at < lines().size() - 1; at++) {
      List<String> fewer = lines();
      fewer.remove(at);
      assertThat(problems(joined(fewer))).as("line %d", at + 1).isNotEmpty();
    }
  }

  /** The seals cannot tell; the register can, for it holds the last seal of the last issue. */
  @Test
  void lastLineTakenOut_isNoticedByWhoeverKnowsItsSeal() {
    List<String> fewer = lines();
    fewer.remove(fewer.size() - 1);
    Ledger shorter = Ledger.read(joined(fewer)).ledger();
    assertThat(shorter.reaches(LEDGER.head().orElseThrow())).isFalse();
    assertThat(LEDGER.reaches(LEDGER.head().orElseThrow())).isTrue();
  }

  @Test
  void everyTwoLinesSwapped_areNoticed() {
    for (int a = 1; a < lines().size(); a++) {
      for (int b = a + 1; b < lines().size(); b++) {
        List<String> swapped = lines();
        Collections.swap(swapped, a, b);
        assertThat(problems(joined(swapped))).as("lines %d and %d", a, b).isNotEmpty();
      }
    }
  }

  @Test
  void everyLinePutInAgain_isNoticed() {
    for (int from = 0; from < lines().size(); from++) {
      for (int to = 0; to <= lines().size(); to++) {
        List<String> more = lines();
        more.add(to, lines().get(from));
        assertThat(problems(joined(more))).as("line %d at %d", from, to).isNotEmpty();
      }
    }
  }

  @Test
  void lineWithASealOfItsOwn_isNoticedByTheNext() {
    List<String> lines = lines();
    Ledger forged =
        Ledger.empty()
            .with(entry(1, "first", "lead-endoscopist"))
            .with(entry(1, "other", "medical-physics"));
    lines.set(2, forged.text().lines().toList().get(2));
    assertThat(problems(joined(lines)))
        .singleElement()
        .satisfies(problem -> assertThat(problem.at().line()).isEqualTo(4));
  }

  @Test
  void linesPastedTogetherByHand_areNoticed() {
    Ledger mine = LEDGER.with(entry(5, "fifth", "lead-endoscopist"));
    Ledger theirs = LEDGER.with(entry(5, "fifth", "medical-physics"));
    String last = theirs.text().lines().reduce((a, b) -> b).orElseThrow();
    assertThat(problems(mine.text() + last + "\n")).hasSize(1);
  }

  @Test
  void fingerprintsHoldNoSignThatCanBeMisread() {
    assertThat(Fingerprint.of(Json.text("x")).text())
        .hasSize(64)
        .matches("([0-9a-hjkmnp-tv-z]{4}-){12}[0-9a-hjkmnp-tv-z]{4}")
        .doesNotContain("i", "l", "o", "u");
    assertThat(Fingerprint.of(Json.text("x")).shortText()).hasSize(24).doesNotEndWith("-");
  }

  /** FIPS 180-4 examples; the digests are known values, computed again here. */
  @Test
  void digestIsSha256() {
    assertThat(HexFormat.of().formatHex(Fingerprint.digest(new byte[0])))
        .isEqualTo("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    assertThat(HexFormat.of().formatHex(Fingerprint.digest("abc".getBytes(StandardCharsets.UTF_8))))
        .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  }
}
