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
import stackside.derive.signed.Fingerprint;
import stackside.derive.signed.SignedFacts;
import stackside.derive.signed.Subjects;
import stackside.derive.standing.SignatureStanding;
import stackside.derive.standing.Standing;
import stackside.inspect.CardRules;
import stackside.model.SignedKind;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.render.Marking;
import stackside.render.OutputFile;
import stackside.render.Publication;
import stackside.render.card.CardRenderer;
import stackside.render.card.RecordRenderer;
import stackside.render.card.RenderedCards;
import stackside.render.plan.CardPlan;
import stackside.render.plan.CardPlanner;
import stackside.render.plan.CardThings;
import stackside.render.site.SiteRenderer;
import stackside.source.Problem;
import stackside.source.Severity;

/** Makes the files of one issue: decides card by card, then renders what may go out. */
final class Issuing {
  private final CheckedContent judged;
  private final Analysis analysis;
  private final Standing standing;
  private final LocalDate on;
  private final List<Trouble> troubles = new ArrayList<>();
  private final Set<ThingId> wrong = new TreeSet<>();
  private final SortedMap<ThingId, List<String>> changed = new TreeMap<>();
  private final SortedMap<ThingId, List<String>> unsettled = new TreeMap<>();

  /** One error of the content, and how far it reaches. */
  private record Trouble(Problem problem, ErrorScope reach) {
    String words() {
      return problem.at() + ": " + problem.message();
    }
  }

  private Issuing(CheckedContent judged, Analysis analysis, Standing standing, LocalDate on) {
    this.judged = judged;
    this.analysis = analysis;
    this.standing = standing;
    this.on = on;
    Subjects subjects = Subjects.of(analysis.unit());
    for (Problem problem : errors(judged)) {
      troubles.add(
          new Trouble(
              problem, ErrorScope.of(problem, analysis.unit(), subjects, judged.sources())));
      subjects.at(problem.at()).ifPresent(wrong::add);
    }
    judged
        .matters()
        .forEach(matter -> put(unsettled, matter.about(), matter.about() + ": " + matter.words()));
  }

  private static List<Problem> errors(CheckedContent judged) {
    return judged.problems().stream()
        .filter(problem -> problem.severity() == Severity.ERROR)
        .toList();
  }

  /** The errors for which nothing at all can be issued, if there are any. */
  static List<Problem> blocking(CheckedContent judged, Unit unit) {
    Subjects subjects = Subjects.of(unit);
    return errors(judged).stream()
        .filter(
            each ->
                ErrorScope.of(each, unit, subjects, judged.sources())
                    instanceof ErrorScope.Everything)
        .toList();
  }

  private static void put(SortedMap<ThingId, List<String>> reasons, ThingId thing, String words) {
    reasons.computeIfAbsent(thing, each -> new ArrayList<>()).add(words);
  }

  /**
   * An issue that is ready to be written.
   *
   * @param register as it was before where nothing has changed since, down to the last page
   * @param problems those that only the finished cards showed
   * @param lost editions that stay, but whose file is gone
   */
  record Ready(
      Issue issue,
      Register register,
      List<OutputFile> files,
      List<Problem> problems,
      List<String> lost) {

    /** Whether just these files stand in a folder. */
    boolean standsIn(SortedMap<String, OutputFile> folder) {
      return files.size() == folder.size()
          && files.stream().allMatch(file -> file.equals(folder.get(file.path())));
    }
  }

  static Ready of(
      CheckedContent judged,
      Register before,
      SortedMap<String, OutputFile> hanging,
      LocalDate on,
      OutputFile unit) {
    Issuing issuing =
        new Issuing(judged, judged.analysis().orElseThrow(), judged.standing().orElseThrow(), on);
    return issuing.ready(before, hanging, unit);
  }

  private Ready ready(Register before, SortedMap<String, OutputFile> hanging, OutputFile kept) {
    Unit unit = analysis.unit();
    Publication trial = publication(analysis, Editions.none(), on);
    List<Problem> found = new ArrayList<>();
    List<Candidate> candidates =
        CardPlanner.plans(trial).stream()
            .map(plan -> candidate(unit, plan, trial, before, found))
            .toList();
    Issue issue = Issue.of(before, on, candidates, unread());
    Register after = issue.register(judged.approvals().ledger().head(), judged.soundRecords());
    if (after.repeatsItself()) {
      LocalDate last = before.last().orElseThrow().on();
      Ready again = made(issue, before, last, hanging, kept, found);
      if (again.standsIn(hanging)) {
        return again;
      }
    }
    return made(issue, after, on, hanging, kept, found);
  }

  /** The files as pages made on a day show them. */
  private Ready made(
      Issue issue,
      Register register,
      LocalDate day,
      SortedMap<String, OutputFile> hanging,
      OutputFile kept,
      List<Problem> found) {
    Editions editions = issue.editions(register);
    Publication whole = publication(analysis, editions, day);
    Set<String> madeNow = new TreeSet<>();
    issue.decisions().stream()
        .filter(Decision::madeNow)
        .forEach(decision -> madeNow.add(decision.name()));
    List<CardPlan> plans =
        CardPlanner.plans(whole).stream().filter(plan -> madeNow.contains(plan.name())).toList();

    Publication shown =
        publication(Analysis.of(IssuedUnit.of(analysis.unit(), held())), editions, day);
    List<OutputFile> files = new ArrayList<>(SiteRenderer.render(shown, plans));
    files.addAll(CardRenderer.render(whole, plans).files());
    files.addAll(RecordRenderer.render(shown));
    List<String> lost = keep(issue, hanging, files);
    files.add(OutputFile.text(Register.FILE, register.text()));
    files.add(kept);
    files.addAll(KeptUnit.templates(analysis.unit()));
    return new Ready(issue, register, files, found, lost);
  }

  private static Publication publication(Analysis shown, Editions editions, LocalDate day) {
    return new Publication(shown, List.of(), Faults.all(), Marking.ISSUED, editions, day);
  }

  private Candidate candidate(
      Unit unit, CardPlan plan, Publication trial, Register before, List<Problem> found) {
    Set<ThingId> things = CardThings.of(unit, plan);
    List<String> errors = new ArrayList<>();
    List<String> open = new ArrayList<>();
    troubles.stream()
        .filter(trouble -> trouble.reach().touches(plan, things))
        .forEach(
            trouble ->
                (ErrorScope.isDoubt(trouble.problem()) ? open : errors).add(trouble.words()));
    open.addAll(about(things, unsettled));
    List<Problem> seen = seen(plan, trial, open);
    found.addAll(seen);
    seen.stream()
        .filter(problem -> problem.severity() == Severity.ERROR)
        .forEach(problem -> errors.add(problem.at() + ": " + problem.message()));
    return new Candidate(
        plan.name(),
        plan.code(),
        plan.room().title() + ", " + plan.asset().title() + ": " + plan.title(),
        plan.asset().id().slug(),
        plan.path(),
        plan.room().copies().value(),
        plan.fingerprint().text(),
        review(things),
        changes(things, before),
        errors,
        open);
  }

  /** What is wrong with the finished card; one that is not signed lacks words, and only drafts. */
  private static List<Problem> seen(CardPlan plan, Publication trial, List<String> open) {
    RenderedCards card = CardRenderer.render(trial, List.of(plan));
    List<Problem> seen = new ArrayList<>(card.problems());
    if (open.isEmpty()) {
      seen.addAll(CardRules.judge(trial, List.of(plan), card.printed()));
    }
    return seen;
  }

  /** Why a card that is not made now need not be gone from the content. */
  private Optional<String> unread() {
    return troubles.stream()
        .filter(trouble -> ErrorScope.isUnread(trouble.problem()))
        .map(trouble -> "not all of the content can be read: " + trouble.words())
        .findFirst();
  }

  private static List<String> about(Set<ThingId> things, SortedMap<ThingId, List<String>> reasons) {
    return things.stream()
        .flatMap(thing -> reasons.getOrDefault(thing, List.of()).stream())
        .toList();
  }

  /** What is signed anew since the last issue, field by field. */
  private List<String> changes(Set<ThingId> things, Register before) {
    return before
        .ledgerHead()
        .map(head -> things.stream().flatMap(thing -> changes(thing, head)).toList())
        .orElse(List.of());
  }

  private Stream<String> changes(ThingId thing, Fingerprint head) {
    return changed.computeIfAbsent(thing, each -> changed(each, head)).stream();
  }

  private List<String> changed(ThingId id, Fingerprint head) {
    Unit unit = analysis.unit();
    return unit.find(id).flatMap(thing -> SignedFacts.of(unit, thing)).stream()
        .flatMap(facts -> judged.approvals().changesSince(head, facts).stream())
        .map(change -> id + ", " + change.words())
        .toList();
  }

  private Optional<LocalDate> review(Set<ThingId> things) {
    return things.stream()
        .flatMap(thing -> standing.signaturesOf(thing).stream())
        .flatMap(signed -> signed.reviewBy().stream())
        .min(Comparator.naturalOrder());
  }

  /**
   * What pages may not show: what is wrong, and what is not signed as it is now. A generator is
   * shown all the same, for that one was taken out of use must be seen at once.
   */
  private Set<ThingId> held() {
    Set<ThingId> held = new TreeSet<>(wrong);
    standing.signatures().stream()
        .filter(each -> each.state() != SignatureStanding.State.SIGNED)
        .filter(each -> each.kind() != SignedKind.ASSET)
        .forEach(each -> held.add(each.thing().id()));
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
