package stackside.seeded;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stackside.Units;
import stackside.cli.AfterIssue;
import stackside.derive.edition.RecordFaults;
import stackside.derive.edition.Register;
import stackside.derive.signed.Approvals;
import stackside.derive.signed.FactChange;
import stackside.derive.signed.SignedFacts;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Puts one harmful edit after the other into the demonstration's text, at least one for every
 * component of the model, and holds who notices it: the rule named in {@code seeded-faults.txt}, on
 * the edited line and with no other error, or else the signature, the standing or a card. What is
 * not on that table must be noticed by somebody. {@code -Dseeded.seed=N-M} chooses other places and
 * values, {@code -Dseeded.only=REGEX} the components.
 */
final class SeededFaultsTest {
  private static final Path TABLE = Path.of("src/test/resources/seeded-faults.txt");
  private static final List<Long> SEEDS = seeds(System.getProperty("seeded.seed", "9-11"));
  private static final String ONLY = System.getProperty("seeded.only", ".*");

  /** The normal run makes one edit of so many. */
  private static final int ONE_OF = 25;

  private static final String SIGNATURE = "signature";
  private static final String STANDING = "standing";
  private static final String CARD = "card";
  private static final String HARMLESS = "harmless";

  /**
   * What a drill must mend depends on every circuit, and what a slot holds on all profiles that
   * name it. One slip may therefore show there as well. Both reports are true and name the other
   * place.
   */
  private static final Set<String> FOLLOWS = Set.of("drill-misses-cause", "slot-with-two-contents");

  private static Unit demonstration;
  private static Lines lines;
  private static Pool pool;
  private static Map<ThingId, SignedFacts> signed;
  private static ActedOn actedOn;
  private static Register register;

  /**
   * What a line of the table says about one slip.
   *
   * @param by who may be the first to notice it, depending on the place; anybody where it is empty
   */
  private record Expected(String component, String slip, List<String> by) {
    boolean accepts(String who) {
      return by.isEmpty() || by.contains(who);
    }
  }

  private record Seeded(Expected expected, Edit edit) {}

  /** The first check to report one edit; a miss if the table does not name it. */
  private record SlipOutcome(Seeded seeded, String by, Optional<String> miss) {}

  /** {@code 9} or {@code 9-11}. */
  private static List<Long> seeds(String range) {
    String[] ends = range.split("-", 2);
    return LongStream.rangeClosed(Long.parseLong(ends[0]), Long.parseLong(ends[ends.length - 1]))
        .boxed()
        .toList();
  }

  @BeforeAll
  static void readClean() throws Exception {
    register = Register.read(Files.readString(Path.of("site", Register.FILE)));
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
                    .map(pair -> new Expected(words[0], pair[0], List.of(pair[1].split("\\|")))))
        .toList();
  }

  @Test
  void tableHoldsComponentsOfTheModelAlone() throws IOException {
    assertThat(table().stream().map(Expected::component))
        .hasSizeGreaterThan(300)
        .isSubsetOf(ModelSpots.components());
  }

  /**
   * Every slip that can be made in a component which is not on the table, a new one, say. Somebody
   * must notice each of them, whoever that is. A group of other components has none of its own.
   */
  private static List<Expected> notOnTheTable() throws IOException {
    Set<String> known = table().stream().map(Expected::component).collect(Collectors.toSet());
    List<Expected> slips = new ArrayList<>();
    for (String component : ModelSpots.components()) {
      if (!known.contains(component)) {
        List<Spot> spots = spots(component);
        assertThat(spots).as("places of the demonstration that write " + component).isNotEmpty();
        Stream.of(Slip.values())
            .map(slip -> new Expected(component, slip.name(), List.of()))
            .filter(each -> edits(each, SEEDS.get(0)).findFirst().isPresent())
            .forEach(slips::add);
      }
    }
    return slips;
  }

  @Test
  void aFewSeededFaultsAreNoticedByWhoeverMust() throws IOException {
    List<Expected> slips = slips();
    noticed(
        Stream.iterate(0, i -> i < slips.size(), i -> i + ONE_OF).map(slips::get).toList(),
        SEEDS.subList(0, 1));
  }

  @Test
  @Tag("thorough")
  void everySeededFaultIsNoticedByWhoeverMust() throws IOException {
    int edits = noticed(slips(), SEEDS);
    assertThat(edits).isGreaterThanOrEqualTo(ONLY.equals(".*") ? 400 : 1);
  }

  private static List<Expected> slips() throws IOException {
    return Stream.concat(table().stream(), notOnTheTable().stream())
        .filter(each -> !each.slip().equals("PART"))
        .filter(each -> each.component().matches(ONLY))
        .toList();
  }

  /** How many different edits were made; each was noticed. */
  private static int noticed(List<Expected> slips, List<Long> seeds) {
    Map<String, Seeded> distinct = new LinkedHashMap<>();
    seeds.forEach(
        seed ->
            slips.stream()
                .map(each -> new Seeded(each, edit(each, seed)))
                .forEach(each -> distinct.putIfAbsent(described(each), each)));
    List<SlipOutcome> outcomes = outcomes(List.copyOf(distinct.values()));
    print(seeds, outcomes);
    assertThat(outcomes.stream().flatMap(each -> each.miss().stream())).isEmpty();
    assertThat(outcomes).isNotEmpty();
    return outcomes.size();
  }

  private static List<SlipOutcome> outcomes(List<Seeded> seeded) {
    Approvals approvals = AfterIssue.approvals();
    ThreadLocal<Judge> judges =
        ThreadLocal.withInitial(() -> new Judge(lines, approvals, register));
    return seeded.parallelStream().map(each -> outcome(each, judges.get())).toList();
  }

  private static Edit edit(Expected expected, long seed) {
    return edits(expected, seed)
        .findFirst()
        .orElseThrow(() -> new AssertionError("nowhere to seed " + expected));
  }

  private static List<Spot> spots(String component) {
    return pool.spots().stream().filter(spot -> spot.component().equals(component)).toList();
  }

  private static Stream<Edit> edits(Expected expected, long seed) {
    Slip slip = Slip.valueOf(expected.slip());
    Random random =
        new Random(seed * 31 + expected.component().hashCode() * 17L + slip.name().hashCode());
    List<Spot> spots = new ArrayList<>(spots(expected.component()));
    Collections.shuffle(spots, random);
    return spots.stream().flatMap(spot -> slip.at(spot, lines, pool, random).stream());
  }

  /**
   * The first check that reports it, in the order rule, signature, standing, card; it must be an
   * expected one.
   */
  private static SlipOutcome outcome(Seeded seeded, Judge judge) {
    Judge.Verdict verdict = judge.after(seeded.edit());
    List<Problem> there =
        verdict.problems().stream().filter(each -> points(each, seeded.edit())).toList();
    Optional<String> named =
        there.stream()
            .map(each -> each.fault().id())
            .filter(seeded.expected()::accepts)
            .findFirst();
    Optional<String> by =
        named
            .filter(rule -> errors(verdict).allMatch(each -> belongs(each, there, seeded.edit())))
            .or(() -> there.isEmpty() ? noticedBy(verdict) : Optional.empty());
    Optional<String> miss =
        by.filter(seeded.expected()::accepts).isPresent()
            ? Optional.empty()
            : Optional.of(
                described(seeded)
                    + by.orElse("nobody")
                    + told(verdict)
                    + " there: "
                    + there.stream().map(each -> each.fault().id()).distinct().sorted().toList());
    return new SlipOutcome(seeded, by.orElse("nobody"), miss);
  }

  /**
   * Whether an error belongs to the edit: it points there, is of a kind that does, or is a
   * consequence elsewhere.
   */
  private static boolean belongs(Problem error, List<Problem> there, Edit edit) {
    return points(error, edit)
        || FOLLOWS.contains(error.fault().id())
        || there.stream().anyMatch(each -> each.fault().equals(error.fault()));
  }

  private static Stream<Problem> errors(Judge.Verdict verdict) {
    return verdict.problems().stream().filter(each -> each.severity() == Severity.ERROR);
  }

  private static String told(Judge.Verdict verdict) {
    return verdict.problems().stream()
        .map(problem -> problem.fault().id() + "@" + problem.at())
        .collect(Collectors.joining(", ", " [", "]"));
  }

  /**
   * Whether a problem is on the edited line, or names that line in a note. A deleted row no longer
   * has a line, only a file.
   */
  private static boolean points(Problem problem, Edit edit) {
    boolean gone = problem.fault().equals(RecordFaults.REMOVED);
    return edit.touches(problem.at())
        || (gone && problem.at().file().equals(edit.file()))
        || problem.notes().stream().anyMatch(note -> edit.touches(note.at()));
  }

  /** What else notices an edit that no rule reports; empty if the unit cannot be read. */
  private static Optional<String> noticedBy(Judge.Verdict verdict) {
    return verdict.unit().flatMap(unit -> noticedBy(unit, verdict.problems().isEmpty()));
  }

  private static Optional<String> noticedBy(Unit unit, boolean quiet) {
    if (voidsASignature(unit)) {
      return Optional.of(SIGNATURE);
    }
    ActedOn now = ActedOn.of(unit);
    if (!now.standing().equals(actedOn.standing())) {
      return Optional.of(STANDING);
    }
    // A card that says something else is a new edition, which the next issue lists for printing.
    if (!now.cards().equals(actedOn.cards())) {
      return Optional.of(CARD);
    }
    boolean harmless =
        quiet && now.equals(actedOn) && Meaning.of(unit).equals(Meaning.of(demonstration));
    return harmless ? Optional.of(HARMLESS) : Optional.empty();
  }

  /** Whether something signed differs, and the difference can be described. */
  private static boolean voidsASignature(Unit unit) {
    return facts(unit).values().stream()
        .flatMap(
            now ->
                Optional.ofNullable(signed.get(now.thing())).stream()
                    .filter(before -> !before.fingerprint().equals(now.fingerprint()))
                    .flatMap(before -> FactChange.between(before.facts(), now.facts()).stream()))
        .findAny()
        .isPresent();
  }

  private static String described(Seeded seeded) {
    return seeded.expected() + " " + seeded.edit().words() + " -> ";
  }

  private static void print(List<Long> seeds, List<SlipOutcome> outcomes) {
    long harmless = count(outcomes, HARMLESS);
    long harmful = outcomes.size() - harmless;
    long missed = outcomes.stream().filter(each -> each.miss().isPresent()).count();
    long others = count(outcomes, SIGNATURE) + count(outcomes, STANDING) + count(outcomes, CARD);
    System.out.printf(
        "seeded faults (seeds %s): %d different edits, of which %d proved harmless; of the %d"
            + " harmful ones %d noticed by a rule on the edited line, %d by the signature, %d by the"
            + " standing, %d by the edition of a card, %d missed: %.1f %% noticed%n",
        seeds,
        outcomes.size(),
        harmless,
        harmful,
        harmful - missed - others,
        count(outcomes, SIGNATURE),
        count(outcomes, STANDING),
        count(outcomes, CARD),
        missed,
        100.0 * (harmful - missed) / harmful);
    outcomes.forEach(
        each -> each.miss().ifPresent(miss -> System.out.println("  not as expected: " + miss)));
  }

  private static long count(List<SlipOutcome> outcomes, String by) {
    return outcomes.stream().filter(each -> each.miss().isEmpty() && each.by().equals(by)).count();
  }
}
