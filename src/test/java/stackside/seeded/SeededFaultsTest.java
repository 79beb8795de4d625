package stackside.seeded;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import stackside.Units;
import stackside.derive.signed.FactChange;
import stackside.derive.signed.SignedFacts;
import stackside.derive.standing.Standing;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Puts one harmful edit after the other into the demonstration's text, at least one for every
 * component of the model, and holds who notices it: the rule named in {@code seeded-faults.txt}, on
 * the edited line and with no other error, or else the signature. {@code -Dseeded.seed=N} chooses
 * other places and values.
 */
final class SeededFaultsTest {
  private static final Path TABLE = Path.of("src/test/resources/seeded-faults.txt");
  private static final long SEED = Long.getLong("seeded.seed", 9);
  private static final String SIGNATURE = "signature";
  private static final String STANDING = "standing";
  private static final String NOBODY = "nobody";
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  private static Unit demonstration;
  private static Lines lines;
  private static Pool pool;
  private static Map<ThingId, SignedFacts> signed;
  private static List<String> standing;

  /** What a line of the table says of one slip. */
  private record Expected(String component, String slip, String by) {}

  private record Seeded(Expected expected, Edit edit) {}

  /** What came of one edit; absent where it came as expected. */
  private record Outcome(Expected expected, Optional<String> miss) {}

  @BeforeAll
  static void readClean() {
    demonstration = Units.demonstration();
    lines = Lines.of(Path.of("content"));
    pool = new Pool(lines, ModelSpots.of(demonstration).stream().map(lines::exact).toList());
    signed = facts(demonstration);
    standing = standing(demonstration);
  }

  private static Map<ThingId, SignedFacts> facts(Unit unit) {
    return SignedFacts.allOf(unit)
        .collect(Collectors.toMap(SignedFacts::thing, each -> each, (a, b) -> a, TreeMap::new));
  }

  private static List<Expected> table() throws IOException {
    return Files.readAllLines(TABLE).stream()
        .filter(line -> !line.startsWith("#"))
        .map(line -> line.split(" "))
        .flatMap(
            words ->
                Stream.of(words)
                    .skip(1)
                    .map(word -> word.split("=", 2))
                    .map(pair -> new Expected(words[0], pair[0], pair[1])))
        .toList();
  }

  @Test
  void everyComponentOfTheModelIsOnTheTable() throws IOException {
    assertThat(table().stream().map(Expected::component).distinct().sorted())
        .containsExactlyElementsOf(ModelSpots.components());
  }

  @Test
  void everySeededFaultIsNoticedByWhoeverMust() throws IOException {
    List<Seeded> seeded =
        table().stream()
            .filter(each -> !each.slip().equals("PART"))
            .map(each -> new Seeded(each, edit(each)))
            .toList();
    List<Outcome> outcomes = outcomes(seeded);
    print(outcomes);
    assertThat(outcomes.stream().flatMap(each -> each.miss().stream())).isEmpty();
    assertThat(outcomes).hasSizeGreaterThanOrEqualTo(300);
  }

  private static List<Outcome> outcomes(List<Seeded> seeded) {
    ThreadLocal<Judge> judges = ThreadLocal.withInitial(() -> new Judge(lines));
    return seeded.parallelStream().map(each -> outcome(each, judges.get())).toList();
  }

  private static Edit edit(Expected expected) {
    Slip slip = Slip.valueOf(expected.slip());
    Random random =
        new Random(SEED * 31 + expected.component().hashCode() * 17L + slip.name().hashCode());
    List<Spot> spots =
        new ArrayList<>(
            pool.spots().stream()
                .filter(spot -> spot.component().equals(expected.component()))
                .toList());
    Collections.shuffle(spots, random);
    return spots.stream()
        .flatMap(spot -> slip.at(spot, lines, pool, random).stream())
        .findFirst()
        .orElseThrow(() -> new AssertionError("nowhere to seed " + expected));
  }

  private static Outcome outcome(Seeded seeded, Judge judge) {
    Expected expected = seeded.expected();
    return new Outcome(
        expected,
        expected.by().equals(SIGNATURE)
            ? missOfSignature(seeded, judge)
            : expected.by().equals(STANDING)
                ? missOfStanding(seeded, judge)
                : missOfRule(seeded, judge.after(seeded.edit()).problems()));
  }

  private static Optional<String> missOfRule(Seeded seeded, List<Problem> problems) {
    if (seeded.expected().by().equals(NOBODY)) {
      return Optional.empty();
    }
    List<String> wanted = List.of(seeded.expected().by().split("\\|"));
    boolean named =
        problems.stream()
            .anyMatch(
                problem -> wanted.contains(problem.fault().id()) && points(problem, seeded.edit()));
    long errors = problems.stream().filter(problem -> problem.severity() == Severity.ERROR).count();
    return named && errors <= 1
        ? Optional.empty()
        : Optional.of(
            described(seeded)
                + problems.stream()
                    .map(problem -> problem.fault().id() + "@" + problem.at())
                    .collect(Collectors.joining(", ", "[", "]")));
  }

  /** Whether a problem lies on the edited line, or names it in a note. */
  private static boolean points(Problem problem, Edit edit) {
    return edit.touches(problem.at())
        || problem.notes().stream().anyMatch(note -> edit.touches(note.at()));
  }

  private static Optional<String> missOfSignature(Seeded seeded, Judge judge) {
    Optional<Unit> unit = judge.read(seeded.edit());
    List<FactChange> changes =
        unit.stream()
            .flatMap(each -> facts(each).values().stream())
            .flatMap(
                now ->
                    Optional.ofNullable(signed.get(now.thing())).stream()
                        .filter(before -> !before.fingerprint().equals(now.fingerprint()))
                        .flatMap(
                            before -> FactChange.between(before.facts(), now.facts()).stream()))
            .toList();
    return changes.isEmpty()
        ? Optional.of(described(seeded) + "no signature is void")
        : Optional.empty();
  }

  /** Which stored programs and output checks stand how on a day. */
  private static List<String> standing(Unit unit) {
    Standing on = Standing.of(unit, DAY, SignedFacts.fingerprints(unit));
    return Stream.concat(
            on.programs().all().stream()
                .map(each -> each.asset().id() + " " + each.profile().id() + " " + each.verdict()),
            on.outputChecks().stream()
                .map(each -> each.asset().id() + " " + each.mode().id() + " " + each.state()))
        .toList();
  }

  private static Optional<String> missOfStanding(Seeded seeded, Judge judge) {
    Judge.Verdict verdict = judge.after(seeded.edit());
    boolean noticed =
        verdict.problems().stream().anyMatch(problem -> points(problem, seeded.edit()))
            || verdict.unit().stream().anyMatch(unit -> !standing(unit).equals(standing));
    return noticed
        ? Optional.empty()
        : Optional.of(described(seeded) + "everything stands as before");
  }

  private static String described(Seeded seeded) {
    return seeded.expected() + " " + seeded.edit().words() + " -> ";
  }

  private static void print(List<Outcome> outcomes) {
    List<Outcome> noticed = outcomes.stream().filter(each -> each.miss().isEmpty()).toList();
    long byRule = noticed.stream().filter(each -> isRule(each.expected())).count();
    long bySignature = count(noticed, SIGNATURE);
    long byStanding = count(noticed, STANDING);
    System.out.printf(
        "seeded faults (seed %d): %d edits, %d noticed by a rule on the edited line, %d by the"
            + " signature, %d by the standing, %d by nobody%n",
        SEED,
        outcomes.size(),
        byRule,
        bySignature,
        byStanding,
        outcomes.size() - byRule - bySignature - byStanding);
    outcomes.stream()
        .filter(each -> each.expected().by().equals(NOBODY))
        .forEach(each -> System.out.println("  by nobody: " + each.expected()));
    outcomes.forEach(
        each -> each.miss().ifPresent(miss -> System.out.println("  missed: " + miss)));
  }

  private static long count(List<Outcome> outcomes, String by) {
    return outcomes.stream().filter(each -> each.expected().by().equals(by)).count();
  }

  private static boolean isRule(Expected expected) {
    return !List.of(SIGNATURE, STANDING, NOBODY).contains(expected.by());
  }
}
