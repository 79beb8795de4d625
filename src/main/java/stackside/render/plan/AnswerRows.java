package stackside.render.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.coverage.Cell;
import stackside.derive.coverage.Cover;
import stackside.derive.coverage.Coverage;
import stackside.model.Fact;
import stackside.model.Lesion;
import stackside.model.PatientGroup;
import stackside.model.PedalColour;
import stackside.model.Profile;
import stackside.model.Sentence;
import stackside.model.Site;
import stackside.model.Step;
import stackside.model.Tract;
import stackside.model.Unit;
import stackside.render.Words;
import stackside.source.Location;

/**
 * Turns the answers of a room on one generator into the rows of its card. Each distinct answer is
 * one row and lists in words all lesions and sites that it answers, so that no question is missing.
 */
final class AnswerRows {

  private final Unit unit;
  private final Coverage coverage;
  private final Words words;
  private final List<Cell> cells;
  private final List<PedalColour> pedals;
  private final ToldAnswers told;

  /** A question and one of the answers to it. */
  private record Answered(
      Cell cell,
      AnswerRow.Told answer,
      Optional<Phrase> alternative,
      List<Phrase> cautions,
      Location at) {

    /** An answer that has no profile of its own. */
    static Answered without(Cell cell, AnswerRow.Told answer) {
      return new Answered(cell, answer, Optional.empty(), List.of(), cell.offer().at());
    }

    /** Two answers are the same if the card says the same about both, including the caution. */
    List<String> words() {
      List<String> words = new ArrayList<>();
      words.add(answer instanceof AnswerRow.WithCurrent ? "with current" : "in words");
      words.add(cautions.stream().map(Phrase::words).collect(Collectors.joining(" ")));
      answer.phrases().map(Phrase::words).forEach(words::add);
      return words;
    }
  }

  /** For which patients, at which steps, at which sites. */
  private record Extent(Set<Site> sites, Set<Step> steps, Set<PatientGroup> patients) {}

  /** The rows for these questions, all of one room and generator. */
  AnswerRows(Unit unit, Coverage coverage, Words words, List<Cell> cells) {
    this.unit = unit;
    this.coverage = coverage;
    this.words = words;
    this.cells = List.copyOf(cells);
    this.pedals = pedals(unit, cells);
    this.told = new ToldAnswers(unit, words, pedals);
  }

  /** The pedals that exist, plus any that does not exist but is set by an answer. */
  private static List<PedalColour> pedals(Unit unit, List<Cell> cells) {
    Stream<PedalColour> there =
        cells.stream()
            .limit(1)
            .flatMap(cell -> unit.pedalsFor(cell.room(), cell.machine()).stream());
    Stream<PedalColour> set =
        cells.stream()
            .map(Cell::cover)
            .flatMap(cover -> Stream.concat(cover.answer().stream(), cover.alternatives().stream()))
            .distinct()
            .flatMap(profile -> profile.settings().stream())
            .flatMap(
                settings ->
                    Stream.of(PedalColour.values())
                        .filter(colour -> settings.pedal(colour).setting().isPresent()));
    return Stream.concat(there, set).distinct().sorted().toList();
  }

  /** The pedals that have a column on the card. */
  List<PedalColour> pedals() {
    return pedals;
  }

  List<AnswerRow> rows() {
    Map<List<String>, List<Answered>> groups = new LinkedHashMap<>();
    cells.stream()
        .sorted(bySiteThenLesion())
        .flatMap(cell -> answers(cell).stream())
        .forEach(each -> groups.computeIfAbsent(each.words(), w -> new ArrayList<>()).add(each));
    return groups.values().stream().map(this::row).sorted(hereFirst()).toList();
  }

  /** Answers from another generator go below all answers from this one. */
  private static Comparator<AnswerRow> hereFirst() {
    return Comparator.comparing(AnswerRow::elsewhere);
  }

  /** Sorts by tract in the unit's order of sites, then by lesion, site and step. */
  private Comparator<Cell> bySiteThenLesion() {
    List<Tract> tracts =
        unit.sites().stream().map(site -> site.tract().value()).distinct().toList();
    return Comparator.<Cell>comparingInt(cell -> tracts.indexOf(cell.site().tract().value()))
        .thenComparingInt(cell -> unit.lesions().indexOf(cell.lesion()))
        .thenComparingInt(cell -> unit.sites().indexOf(cell.site()))
        .thenComparingInt(cell -> stepOf(cell.lesion(), cell.step()));
  }

  /** The position of a step in the lesion's own order: for example, first cut, then bleeding. */
  private static int stepOf(Lesion lesion, Step step) {
    return lesion.steps().stream().map(Fact::value).toList().indexOf(step);
  }

  private List<Answered> answers(Cell cell) {
    List<Answered> answers = new ArrayList<>();
    Cover cover = cell.cover();
    if (cover.preferred().isEmpty()) {
      answers.add(withoutAnswer(cell));
    }
    if (cover.preferred().size() > 1) {
      answers.add(Answered.without(cell, told.several(cell.offer().at())));
    }
    for (Profile profile : cover.answer().stream().toList()) {
      answers.add(answered(cell, profile, Optional.empty()));
    }
    for (Profile profile : cover.alternatives()) {
      answers.add(answered(cell, profile, told.alternative(profile)));
    }
    return answers;
  }

  private Answered answered(Cell cell, Profile profile, Optional<Phrase> alternative) {
    return new Answered(cell, told.of(profile), alternative, told.cautions(profile), profile.at());
  }

  /** What the card says if there is no answer on this generator. */
  private Answered withoutAnswer(Cell cell) {
    return coverage.of(cell.room()).stream()
        .filter(other -> sameQuestion(cell, other) && !other.asset().id().equals(cell.asset().id()))
        .flatMap(
            other -> other.cover().answer().map(answer -> elsewhere(cell, other, answer)).stream())
        .findFirst()
        .orElseGet(() -> Answered.without(cell, told.none(cell.offer().at())));
  }

  /** Another generator of the room answers. If its answer is no, so is this card's. */
  private Answered elsewhere(Cell cell, Cell other, Profile answer) {
    return answer.notApproved().isPresent()
        ? answered(cell, answer, Optional.empty())
        : Answered.without(cell, told.elsewhere(other));
  }

  private static boolean sameQuestion(Cell one, Cell other) {
    return one.lesion().id().equals(other.lesion().id())
        && one.site().id().equals(other.site().id())
        && one.step().id().equals(other.step().id())
        && one.patients().id().equals(other.patients().id());
  }

  private AnswerRow row(List<Answered> group) {
    Map<String, List<Answered>> preferredFirst = new LinkedHashMap<>();
    preferredFirst.put("", new ArrayList<>());
    for (Answered each : group) {
      String name = each.alternative().map(Phrase::words).orElse("");
      preferredFirst.computeIfAbsent(name, n -> new ArrayList<>()).add(each);
    }
    List<AnswerRow.Scope> scopes = new ArrayList<>();
    preferredFirst.values().forEach(each -> scopes.addAll(scopes(each)));
    return new AnswerRow(scopes, group.get(0).cautions(), group.get(0).answer());
  }

  private List<AnswerRow.Scope> scopes(List<Answered> group) {
    Map<Extent, Set<Lesion>> lesions = new LinkedHashMap<>();
    stepsTogether(group)
        .forEach(
            (lesion, extents) ->
                extents.forEach(
                    extent ->
                        lesions.computeIfAbsent(extent, e -> new LinkedHashSet<>()).add(lesion)));
    List<AnswerRow.Scope> scopes = new ArrayList<>();
    lesions.forEach((extent, which) -> scopes.add(scope(group, extent, which)));
    return scopes;
  }

  /** Each lesion's extents, with steps merged where sites and patients are the same. */
  private static Map<Lesion, List<Extent>> stepsTogether(List<Answered> group) {
    Map<Lesion, Map<List<Set<?>>, Extent>> merged = new LinkedHashMap<>();
    patientsTogether(group)
        .forEach(
            (lesion, extents) ->
                extents.forEach(
                    extent ->
                        merged
                            .computeIfAbsent(lesion, l -> new LinkedHashMap<>())
                            .merge(
                                List.of(extent.sites(), extent.patients()),
                                extent,
                                (one, other) ->
                                    new Extent(
                                        one.sites(),
                                        union(one.steps(), other.steps()),
                                        one.patients()))));
    return lists(merged);
  }

  /** Each lesion's extents per step, with patients merged where the sites are the same. */
  private static Map<Lesion, List<Extent>> patientsTogether(List<Answered> group) {
    Map<Lesion, Map<List<Set<?>>, Extent>> merged = new LinkedHashMap<>();
    sitesTogether(group)
        .forEach(
            (lesion, extents) ->
                extents.forEach(
                    extent ->
                        merged
                            .computeIfAbsent(lesion, l -> new LinkedHashMap<>())
                            .merge(
                                List.of(extent.sites(), extent.steps()),
                                extent,
                                (one, other) ->
                                    new Extent(
                                        one.sites(),
                                        one.steps(),
                                        union(one.patients(), other.patients())))));
    return lists(merged);
  }

  /** Each lesion's extents per step and patient group. */
  private static Map<Lesion, List<Extent>> sitesTogether(List<Answered> group) {
    Map<Lesion, Map<List<Set<?>>, Extent>> merged = new LinkedHashMap<>();
    for (Answered each : group) {
      Cell cell = each.cell();
      Extent single = new Extent(Set.of(cell.site()), Set.of(cell.step()), Set.of(cell.patients()));
      merged
          .computeIfAbsent(cell.lesion(), l -> new LinkedHashMap<>())
          .merge(
              List.of(single.steps(), single.patients()),
              single,
              (one, other) ->
                  new Extent(union(one.sites(), other.sites()), one.steps(), one.patients()));
    }
    return lists(merged);
  }

  private static <K> Map<Lesion, List<Extent>> lists(Map<Lesion, Map<K, Extent>> merged) {
    Map<Lesion, List<Extent>> lists = new LinkedHashMap<>();
    merged.forEach((lesion, extents) -> lists.put(lesion, List.copyOf(extents.values())));
    return lists;
  }

  private static <T> Set<T> union(Set<T> one, Set<T> other) {
    Set<T> both = new LinkedHashSet<>(one);
    both.addAll(other);
    return both;
  }

  private AnswerRow.Scope scope(List<Answered> group, Extent extent, Set<Lesion> lesions) {
    Location at = group.get(0).at();
    String which = WordLists.continued(lesions.stream().map(Lesion::title).toList(), "; ");
    return new AnswerRow.Scope(
        Phrase.of(which + steps(extent, lesions) + patients(group, extent), at),
        Phrase.of(WordLists.sites(unit, extent.sites()), at),
        group.get(0).alternative(),
        List.copyOf(lesions),
        unit.sites().stream().filter(extent.sites()::contains).toList());
  }

  /** The steps in words, unless the names of the lesions already say them. */
  private String steps(Extent extent, Set<Lesion> lesions) {
    String steps =
        unit.steps().stream()
            .filter(extent.steps()::contains)
            .map(step -> Sentence.within(step.title()))
            .collect(Collectors.joining(", "));
    String inSmall = steps.toLowerCase(Locale.ROOT);
    boolean said =
        lesions.stream().allMatch(each -> each.title().toLowerCase(Locale.ROOT).contains(inSmall));
    return said ? "" : ": " + steps;
  }

  /** Names the patients only if the room has other groups too. */
  private String patients(List<Answered> group, Extent extent) {
    int treated = group.get(0).cell().room().patients().size();
    if (extent.patients().size() == treated) {
      return "";
    }
    return ", "
        + words.say(
            "card.only",
            unit.details().patients().stream()
                .filter(extent.patients()::contains)
                .map(each -> Sentence.within(each.title()))
                .reduce((one, other) -> words.say("list.and", one, other))
                .orElse(""));
  }
}
