package stackside.seeded;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Puts one harmful edit after the other into the demonstration's text, at least one for every
 * component of the model, and holds who notices it: the rule named in {@code seeded-faults.txt}, on
 * the edited line and with no other error, or else the signature. {@code -Dseeded.seed=N} chooses
 * other places and values, {@code -Dseeded.only=REGEX} the components.
 */
final class SeededFaultsTest {
  private static final Path TABLE = Path.of("src/test/resources/seeded-faults.txt");
  private static final long SEED = Long.getLong("seeded.seed", 9);
  private static final String ONLY = System.getProperty("seeded.only", ".*");
  private static final String SIGNATURE = "signature";
  private static final String STANDING = "standing";
  private static final String CARD = "card";
  private static final String HARMLESS = "harmless";
  private static final String UNSEEN = "unseen";
  private static final List<String> NO_RULE = List.of(SIGNATURE, STANDING, CARD, HARMLESS, UNSEEN);
  private static final Path REASONS = Path.of("src/test/resources/seeded-unseen.txt");

  private static Unit demonstration;
  private static Lines lines;
  private static Pool pool;
  private static Map<ThingId, SignedFacts> signed;
  private static ActedOn actedOn;

  /** What a line of the table says of one slip. */
  private record Expected(String component, String slip, String by) {}

  private record Seeded(Expected expected, Edit edit) {}

  /** What came of one edit; absent where it came as expected. */
  private record Outcome(Seeded seeded, Optional<String> miss) {

    boolean is(String by) {
      return seeded.expected().by().equals(by);
    }
  }

  @BeforeAll
  static void readClean() {
    demonstration = Units.demonstration();
    lines = Lines.of(Path.of("content"));
    pool = new Pool(lines, ModelSpots.of(demonstration).stream().map(lines::exact).toList());
    signed = facts(demonstration);
    actedOn = ActedOn.of(demonstration);
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
  void everySlipThatNobodySeesHasAReasonOfItsOwn() throws IOException {
    Map<String, String> reasons = new TreeMap<>();
    for (String line : Files.readAllLines(REASONS)) {
      if (!line.startsWith("#")) {
        String[] parts = line.split(": ", 2);
        assertThat(parts).as(line).hasSize(2);
        assertThat(reasons.put(parts[0], parts[1])).as(line).isNull();
      }
    }
    assertThat(reasons.keySet())
        .containsExactlyElementsOf(
            table().stream()
                .filter(each -> each.by().equals(UNSEEN))
                .map(each -> each.component() + " " + each.slip())
                .sorted()
                .toList());
    assertThat(reasons.values()).doesNotHaveDuplicates();
  }

  @Test
  void everySeededFaultIsNoticedByWhoeverMust() throws IOException {
    List<Seeded> seeded =
        table().stream()
            .filter(each -> !each.slip().equals("PART"))
            .filter(each -> each.component().matches(ONLY))
            .map(each -> new Seeded(each, edit(each)))
            .toList();
    List<Outcome> outcomes = outcomes(seeded);
    print(outcomes);
    assertThat(outcomes.stream().flatMap(each -> each.miss().stream())).isEmpty();
    assertThat(outcomes).hasSizeGreaterThanOrEqualTo(ONLY.equals(".*") ? 300 : 1);
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
    Optional<String> miss =
        switch (seeded.expected().by()) {
          case SIGNATURE -> missOfSignature(seeded, judge);
          case STANDING -> missOfStanding(seeded, judge);
          case CARD -> missOfCard(seeded, judge);
          case HARMLESS -> harm(seeded, judge);
          case UNSEEN -> Optional.empty();
          default -> missOfRule(seeded, judge.after(seeded.edit()).problems());
        };
    return new Outcome(seeded, miss);
  }

  private static Optional<String> missOfRule(Seeded seeded, List<Problem> problems) {
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

  private static Optional<String> missOfStanding(Seeded seeded, Judge judge) {
    Judge.Verdict verdict = judge.after(seeded.edit());
    boolean noticed =
        verdict.problems().stream().anyMatch(problem -> points(problem, seeded.edit()))
            || verdict.unit().stream()
                .anyMatch(unit -> !ActedOn.standing(unit).equals(actedOn.standing()));
    return noticed
        ? Optional.empty()
        : Optional.of(described(seeded) + "everything stands as before");
  }

  /** A card that says something else is a new edition, which the next issue names for printing. */
  private static Optional<String> missOfCard(Seeded seeded, Judge judge) {
    boolean noticed =
        judge.read(seeded.edit()).stream()
            .anyMatch(unit -> !ActedOn.of(unit).cards().equals(actedOn.cards()));
    return noticed ? Optional.empty() : Optional.of(described(seeded) + "every card is the same");
  }

  /** What shows that an edit called harmless is not: something else to act on, or a new problem. */
  private static Optional<String> harm(Seeded seeded, Judge judge) {
    Judge.Verdict verdict = judge.after(seeded.edit());
    List<String> differing =
        Stream.concat(
                verdict.problems().stream().map(problem -> problem.fault().id()),
                verdict.unit().stream().flatMap(unit -> ActedOn.of(unit).differing(actedOn)))
            .toList();
    return verdict.unit().isPresent() && differing.isEmpty()
        ? Optional.empty()
        : Optional.of(described(seeded) + "differs: " + differing);
  }

  private static String described(Seeded seeded) {
    return seeded.expected() + " " + seeded.edit().words() + " -> ";
  }

  private static void print(List<Outcome> outcomes) {
    List<Outcome> held = outcomes.stream().filter(each -> each.miss().isEmpty()).toList();
    long rule = held.stream().filter(each -> isRule(each.seeded().expected())).count();
    long noticed = rule + count(held, SIGNATURE) + count(held, STANDING) + count(held, CARD);
    long harmful = outcomes.size() - count(held, HARMLESS);
    System.out.printf(
        "seeded faults (seed %d): %d edits, of which %d proved harmless; of the %d harmful ones %d"
            + " noticed by a rule on the edited line, %d by the signature, %d by the standing, %d"
            + " by the edition of a card, %d missed: %.1f %% noticed%n",
        SEED,
        outcomes.size(),
        count(held, HARMLESS),
        harmful,
        rule,
        count(held, SIGNATURE),
        count(held, STANDING),
        count(held, CARD),
        harmful - noticed,
        100.0 * noticed / harmful);
    outcomes.stream()
        .filter(each -> each.is(UNSEEN))
        .forEach(each -> System.out.println("  missed: " + described(each.seeded())));
    outcomes.forEach(
        each -> each.miss().ifPresent(miss -> System.out.println("  not as expected: " + miss)));
  }

  private static long count(List<Outcome> outcomes, String by) {
    return outcomes.stream().filter(each -> each.is(by)).count();
  }

  private static boolean isRule(Expected expected) {
    return !NO_RULE.contains(expected.by());
  }
}
