package stackside.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.derive.edition.Candidate;
import stackside.derive.edition.Decision;
import stackside.derive.edition.Editions;
import stackside.derive.edition.Issue;
import stackside.derive.edition.IssuedUnit;
import stackside.derive.edition.Register;
import stackside.derive.signed.Subjects;
import stackside.derive.standing.Standing;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.render.Marking;
import stackside.render.OutputFile;
import stackside.render.Publication;
import stackside.render.card.CardRenderer;
import stackside.render.plan.CardPlan;
import stackside.render.plan.CardPlanner;
import stackside.render.plan.CardThings;
import stackside.render.site.OwnTemplates;
import stackside.render.site.SiteRenderer;
import stackside.source.Problem;
import stackside.source.Severity;

/** Makes the files of one issue: decides card by card, then renders what may go out. */
final class Issuing {
  private final Judged judged;
  private final Analysis analysis;
  private final Standing standing;
  private final LocalDate on;
  private final SortedMap<ThingId, List<String>> errors = new TreeMap<>();
  private final SortedMap<ThingId, List<String>> unsettled = new TreeMap<>();
  private final List<String> everywhere = new ArrayList<>();

  private Issuing(Judged judged, Analysis analysis, Standing standing, LocalDate on) {
    this.judged = judged;
    this.analysis = analysis;
    this.standing = standing;
    this.on = on;
    Subjects subjects = Subjects.of(analysis.unit());
    judged.problems().stream()
        .filter(problem -> problem.severity() == Severity.ERROR)
        .forEach(problem -> sort(problem, subjects.at(problem.at())));
    judged
        .matters()
        .forEach(matter -> put(unsettled, matter.about(), matter.about() + ": " + matter.words()));
  }

  private void sort(Problem problem, Optional<ThingId> about) {
    String words = problem.at() + ": " + problem.message();
    about.ifPresentOrElse(thing -> put(errors, thing, words), () -> everywhere.add(words));
  }

  private static void put(SortedMap<ThingId, List<String>> reasons, ThingId thing, String words) {
    reasons.computeIfAbsent(thing, each -> new ArrayList<>()).add(words);
  }

  /**
   * An issue that is ready to be written.
   *
   * @param problems those that only the finished cards showed
   * @param lost editions that stay, but whose file is gone
   */
  record Ready(
      Issue issue,
      Register register,
      List<OutputFile> files,
      List<Problem> problems,
      List<String> lost) {}

  static Ready of(
      Judged judged,
      Register before,
      SortedMap<String, OutputFile> hanging,
      LocalDate on,
      OwnTemplates templates) {
    Issuing issuing =
        new Issuing(judged, judged.analysis().orElseThrow(), judged.standing().orElseThrow(), on);
    return issuing.ready(before, hanging, templates);
  }

  private Ready ready(
      Register before, SortedMap<String, OutputFile> hanging, OwnTemplates templates) {
    Unit unit = analysis.unit();
    Publication trial = templates.worded(publication(analysis, Editions.none()));
    List<Problem> found = new ArrayList<>();
    List<Candidate> candidates =
        CardPlanner.plans(trial).stream().map(plan -> candidate(unit, plan, trial, found)).toList();
    Issue issue = Issue.of(before, on, candidates);
    Register register = issue.register(judged.approvals().ledger().head());
    Editions editions = issue.editions(register);

    Publication whole = templates.worded(publication(analysis, editions));
    Set<String> madeNow = new TreeSet<>();
    issue.decisions().stream()
        .filter(Decision::madeNow)
        .forEach(decision -> madeNow.add(decision.name()));
    List<CardPlan> plans =
        CardPlanner.plans(whole).stream().filter(plan -> madeNow.contains(plan.name())).toList();

    Publication shown = publication(Analysis.of(IssuedUnit.of(unit, held())), editions);
    List<OutputFile> files = new ArrayList<>(SiteRenderer.render(shown, plans, templates));
    files.addAll(CardRenderer.render(whole, plans).files());
    List<String> lost = keep(issue, hanging, files);
    files.add(OutputFile.text(Register.FILE, register.text()));
    return new Ready(issue, register, files, found, lost);
  }

  private Publication publication(Analysis shown, Editions editions) {
    return new Publication(shown, List.of(), Faults.all(), Marking.ISSUED, editions, on);
  }

  private Candidate candidate(Unit unit, CardPlan plan, Publication trial, List<Problem> found) {
    Set<ThingId> things = CardThings.of(unit, plan);
    List<Problem> own = CardRenderer.render(trial, List.of(plan)).problems();
    found.addAll(own);
    List<String> wrong = new ArrayList<>(everywhere);
    wrong.addAll(about(things, errors));
    own.stream()
        .filter(problem -> problem.severity() == Severity.ERROR)
        .forEach(problem -> wrong.add(problem.at() + ": " + problem.message()));
    return new Candidate(
        plan.name(),
        plan.code(),
        plan.room().title() + ", " + plan.asset().title() + ": " + plan.title(),
        plan.asset().id().slug(),
        plan.path(),
        plan.room().copies().value(),
        plan.fingerprint(),
        review(things),
        wrong,
        about(things, unsettled));
  }

  private static List<String> about(Set<ThingId> things, SortedMap<ThingId, List<String>> reasons) {
    return things.stream()
        .flatMap(thing -> reasons.getOrDefault(thing, List.of()).stream())
        .toList();
  }

  private Optional<LocalDate> review(Set<ThingId> things) {
    return things.stream()
        .flatMap(thing -> standing.signaturesOf(thing).stream())
        .flatMap(signed -> signed.reviewBy().stream())
        .min(Comparator.naturalOrder());
  }

  /** What pages may not show: what is wrong, and what is not signed as it is now. */
  private Set<ThingId> held() {
    Set<ThingId> held = new TreeSet<>(errors.keySet());
    Stream.of(unsettled.keySet())
        .flatMap(Set::stream)
        .filter(thing -> standing.signaturesOf(thing).isPresent())
        .forEach(held::add);
    return held;
  }

  /** The last edition of a card that may not go out as it is now. */
  private static List<String> keep(
      Issue issue, SortedMap<String, OutputFile> hanging, List<OutputFile> files) {
    List<String> lost = new ArrayList<>();
    for (Decision decision : issue.decisions()) {
      if (decision.outcome() == Decision.Outcome.STAYS) {
        String path = decision.entry().orElseThrow().path();
        Optional.ofNullable(hanging.get(path)).ifPresentOrElse(files::add, () -> lost.add(path));
      }
    }
    return lost;
  }
}
