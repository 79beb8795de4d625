package stackside.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.derive.edition.Approval;
import stackside.derive.edition.Books;
import stackside.derive.edition.Candidate;
import stackside.derive.edition.CardEntry;
import stackside.derive.edition.Decision;
import stackside.derive.edition.Editions;
import stackside.derive.edition.Found;
import stackside.derive.edition.Issue;
import stackside.derive.edition.IssuedUnit;
import stackside.derive.edition.Register;
import stackside.derive.edition.RegisterEntry;
import stackside.derive.signed.Fingerprint;
import stackside.derive.signed.Json;
import stackside.derive.signed.SignedFacts;
import stackside.derive.standing.SignatureStanding;
import stackside.derive.standing.Standing;
import stackside.inspect.CardRules;
import stackside.model.Alarm;
import stackside.model.AlarmAnswer;
import stackside.model.Asset;
import stackside.model.Kind;
import stackside.model.Profile;
import stackside.model.SignedKind;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.publish.FileList;
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
  private final Books before;
  private final Hanging hanging;
  private final OutputFile unit;
  private final Troubles troubles;
  private final SortedMap<ThingId, List<String>> changed = new TreeMap<>();
  private final SortedMap<String, OutputFile> painted = new TreeMap<>();
  private final List<Problem> found = new ArrayList<>();

  private Issuing(
      CheckedContent judged, LocalDate on, Books before, Hanging hanging, OutputFile unit) {
    this.judged = judged;
    this.analysis = judged.analysis().orElseThrow();
    this.standing = judged.standing().orElseThrow();
    this.on = on;
    this.before = before;
    this.hanging = hanging;
    this.unit = unit;
    this.troubles = Troubles.of(judged);
  }

  /**
   * What lies in the site folder.
   *
   * @param files as they are
   * @param written as they were when they were put there
   */
  record Hanging(SortedMap<String, OutputFile> files, FileList written) {

    /** The files that are not as they were put there, and those that are gone. */
    List<String> altered() {
      return written.differing(FileList.of(files.values()));
    }

    /** A file that is as it was put there. */
    Optional<OutputFile> whole(String path) {
      return Optional.ofNullable(files.get(path)).filter(this::isAsWritten);
    }

    boolean isAsWritten(OutputFile file) {
      Fingerprint then = written.files().get(file.path());
      return then == null || then.equals(Fingerprint.of(file.bytes()));
    }
  }

  /**
   * An issue that is ready to be written.
   *
   * @param after the books as they were before where nothing has changed since, down to the last
   *     page
   * @param problems those that only the finished cards showed
   * @param lost editions that stay, but whose file is gone
   */
  record Ready(
      Issue issue,
      Books after,
      List<OutputFile> files,
      List<Problem> problems,
      List<String> lost) {}

  static Ready of(
      CheckedContent judged, LocalDate on, Books before, Hanging hanging, OutputFile unit) {
    return new Issuing(judged, on, before, hanging, unit).ready();
  }

  private Ready ready() {
    Publication trial = publication(analysis, Editions.none(), on);
    List<CardPlan> plans = CardPlanner.plans(trial);
    Found asked = found(plans);
    Issue issue = Issue.of(before, on, asked);
    List<Candidate> judgedCards = judged(issue, asked.candidates());
    issue = Issue.of(before, on, asked.with(judgedCards));
    Json.Members manifest = manifest();
    RegisterEntry entry = before.entry(issue, manifest, judged.soundRecords());
    if (before.repeats(entry)) {
      Register register = before.register();
      RegisterEntry last = register.last().orElseThrow();
      List<OutputFile> again = files(issue, asked, register, last.on());
      if (last.files().equals(Optional.of(FileList.of(again).fingerprint()))) {
        return ready(issue, before, again);
      }
    }
    List<OutputFile> files = files(issue, asked, before.register().with(entry), on);
    RegisterEntry whole = entry.leaving(FileList.of(files).fingerprint());
    return ready(issue, before.issued(whole, manifest), files);
  }

  private Ready ready(Issue issue, Books after, List<OutputFile> files) {
    List<OutputFile> all = new ArrayList<>(files);
    all.add(OutputFile.text(Register.FILE, after.register().text()));
    Set<String> there = files.stream().map(OutputFile::path).collect(Collectors.toSet());
    List<String> lost =
        issue.decisions().stream()
            .filter(decision -> decision.outcome() == Decision.Outcome.STAYS)
            .map(decision -> decision.entry().orElseThrow().path())
            .filter(path -> !there.contains(path))
            .toList();
    return new Ready(issue, after, all, found, lost);
  }

  /** What is to be decided about. */
  private Found found(List<CardPlan> plans) {
    Unit whole = analysis.unit();
    SortedMap<String, String> bad = new TreeMap<>();
    for (OpenItem matter : judged.matters()) {
      matter
          .alarm()
          .filter(alarm -> alarm != Alarm.REVIEW_OVERDUE && stops(alarm))
          .ifPresent(alarm -> bad.merge(matter.about().slug(), matter.words(), Issuing::bothOnce));
    }
    return new Found(
        plans.stream().map(plan -> candidate(whole, plan)).toList(),
        troubles.inUse(),
        bad,
        waiting(),
        troubles.uncertain());
  }

  /** Two programs in one slot say the same of it. */
  private static String bothOnce(String one, String more) {
    return one.contains(more) ? one : one + "; " + more;
  }

  private boolean stops(Alarm alarm) {
    return analysis.unit().details().answer(alarm) == AlarmAnswer.STOP;
  }

  /** Why a card that is not made any more stays: something that would take it down is unsigned. */
  private SortedMap<String, String> waiting() {
    SortedMap<String, String> waiting = new TreeMap<>();
    troubles.unsettled().forEach((thing, words) -> waiting.put(thing.toString(), words.get(0)));
    for (Asset asset : analysis.unit().assets()) {
      Stream.concat(
              Stream.of(asset.machine().value().id()),
              analysis.unit().profilesOn(asset.machine().value()).stream().map(Profile::id))
          .flatMap(thing -> troubles.unsettled().getOrDefault(thing, List.of()).stream())
          .findFirst()
          .ifPresent(words -> waiting.putIfAbsent(asset.id().toString(), words));
    }
    return waiting;
  }

  private Candidate candidate(Unit whole, CardPlan plan) {
    Set<ThingId> things = CardThings.of(whole, plan);
    List<String> stops =
        judged.matters().stream()
            .filter(matter -> things.contains(matter.about()))
            .filter(matter -> matter.alarm().filter(Alarm.REVIEW_OVERDUE::equals).isPresent())
            .filter(matter -> stops(Alarm.REVIEW_OVERDUE))
            .map(matter -> matter.about() + ": " + matter.words())
            .toList();
    return new Candidate(
        plan.name(),
        plan.code(),
        plan.room().title() + ", " + plan.asset().title() + ": " + plan.title(),
        plan.room().id().slug(),
        plan.asset().id().slug(),
        plan.path(),
        plan.room().copies().value(),
        plan.fingerprint().text(),
        review(things),
        approval(things),
        changes(things),
        troubles.errors(plan, things),
        troubles.open(plan, things),
        stops);
  }

  /** The cards once those to be made are painted as they will hang, and looked at. */
  private List<Candidate> judged(Issue issue, List<Candidate> candidates) {
    Set<String> madeNow = madeNow(issue);
    if (madeNow.isEmpty()) {
      return candidates;
    }
    Publication whole = publication(analysis, editions(issue), on);
    Map<String, CardPlan> asTheyWillHang =
        CardPlanner.plans(whole).stream().collect(Collectors.toMap(CardPlan::name, plan -> plan));
    List<Candidate> after = new ArrayList<>();
    for (Candidate candidate : candidates) {
      CardPlan plan = asTheyWillHang.get(candidate.name());
      after.add(
          plan != null && madeNow.contains(candidate.name())
              ? looked(candidate, whole, plan)
              : candidate);
    }
    return after;
  }

  /** What is painted here is what will be written. */
  private Candidate looked(Candidate candidate, Publication whole, CardPlan plan) {
    RenderedCards card = CardRenderer.render(whole, List.of(plan));
    List<Problem> seen = new ArrayList<>(card.problems());
    seen.addAll(CardRules.judge(whole, List.of(plan), card.printed()));
    found.addAll(seen);
    card.files().forEach(file -> painted.put(candidate.name(), file));
    return candidate.wrong(
        seen.stream()
            .filter(problem -> problem.severity() == Severity.ERROR)
            .map(problem -> problem.at() + ": " + problem.message())
            .toList());
  }

  private static Set<String> madeNow(Issue issue) {
    return issue.decisions().stream()
        .filter(Decision::madeNow)
        .map(Decision::name)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Editions editions(Issue issue) {
    return issue.editions(Register.none(), Set.of(), new TreeMap<>());
  }

  /** The files as pages made on a day show them, without the register. */
  private List<OutputFile> files(Issue issue, Found asked, Register register, LocalDate day) {
    Editions editions = issue.editions(register, waiting(issue, asked), alarms(issue));
    Publication whole = publication(analysis, editions, day);
    Set<String> madeNow = madeNow(issue);
    List<CardPlan> plans = CardPlanner.plans(whole);
    Publication shown =
        publication(Analysis.of(IssuedUnit.of(analysis.unit(), held())), editions, day);
    List<OutputFile> files =
        new ArrayList<>(
            SiteRenderer.render(
                shown, plans.stream().filter(plan -> madeNow.contains(plan.name())).toList()));
    madeNow.forEach(name -> files.add(painted.get(name)));
    files.addAll(RecordRenderer.render(shown));
    for (Decision decision : issue.decisions()) {
      if (decision.outcome() == Decision.Outcome.STAYS) {
        kept(decision.entry().orElseThrow(), whole, plans).ifPresent(files::add);
      }
    }
    files.add(unit);
    files.addAll(KeptUnit.templates(analysis.unit()));
    return files;
  }

  /**
   * The last edition of a card that stays. A file that is not as it was written is no edition; it
   * can be painted again as long as the content still says the same.
   */
  private Optional<OutputFile> kept(CardEntry card, Publication whole, List<CardPlan> plans) {
    return hanging
        .whole(card.path())
        .or(
            () ->
                plans.stream()
                    .filter(plan -> plan.name().equals(card.name()))
                    .filter(plan -> plan.fingerprint().text().equals(card.fingerprint()))
                    .flatMap(plan -> CardRenderer.render(whole, List.of(plan)).printed().stream())
                    .filter(hanging::isAsWritten)
                    .findFirst());
  }

  private static Set<String> waiting(Issue issue, Found asked) {
    Map<String, String> now =
        asked.candidates().stream()
            .collect(Collectors.toMap(Candidate::name, Candidate::fingerprint));
    return issue.decisions().stream()
        .filter(decision -> decision.outcome() == Decision.Outcome.STAYS)
        .flatMap(decision -> decision.entry().stream())
        .filter(card -> !card.fingerprint().equals(now.get(card.name())))
        .map(CardEntry::name)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** What records show against cards in use of which the unit only wants to be warned. */
  private SortedMap<String, String> alarms(Issue issue) {
    SortedMap<String, String> alarms = new TreeMap<>();
    issue.decisions().stream()
        .flatMap(decision -> decision.entry().stream())
        .filter(CardEntry::current)
        .forEach(
            card ->
                judged.matters().stream()
                    .filter(matter -> matter.about().kind() == Kind.ASSET)
                    .filter(matter -> matter.about().slug().equals(card.asset()))
                    .filter(matter -> matter.alarm().isPresent())
                    .forEach(
                        matter -> alarms.merge(card.name(), matter.words(), Issuing::bothOnce)));
    return alarms;
  }

  private Publication publication(Analysis shown, Editions editions, LocalDate day) {
    return new Publication(
        shown, List.of(), Faults.all(), Marking.ISSUED, editions, judged.approvals(), day);
  }

  /** Who agreed to what is printed on a card, and when the last of them did. */
  private Optional<Approval> approval(Set<ThingId> things) {
    Set<String> roles = new TreeSet<>();
    List<LocalDate> days = new ArrayList<>();
    things.stream()
        .flatMap(thing -> standing.signaturesOf(thing).stream())
        .filter(signed -> isPrinted(signed.kind()))
        .flatMap(signed -> signed.wanted().stream())
        .flatMap(wanted -> wanted.given().stream())
        .forEach(
            given -> {
              roles.add(given.role());
              days.add(given.day());
            });
    List<String> inOrder =
        analysis.unit().details().roles().stream()
            .map(role -> role.id().slug())
            .filter(roles::contains)
            .toList();
    return days.stream().max(Comparator.naturalOrder()).map(day -> new Approval(day, inOrder));
  }

  private static boolean isPrinted(SignedKind kind) {
    return switch (kind) {
      case PROFILE, MACHINE, DRILL, CHECKLIST, ROOM -> true;
      case ASSET, SOURCES, POLICIES -> false;
    };
  }

  /** What is in force from now on: everything that all its roles agreed to as it is. */
  private Json.Members manifest() {
    SortedMap<String, String> things = new TreeMap<>(before.inForce());
    things.keySet().removeIf(this::isAgreedGone);
    for (SignatureStanding signed : standing.signatures()) {
      if (signed.missing().isEmpty()) {
        SignedFacts.of(analysis.unit(), signed.thing())
            .ifPresent(facts -> things.put(facts.thing().toString(), facts.fingerprint().text()));
      }
    }
    return Books.manifest(things);
  }

  private boolean isAgreedGone(String thing) {
    return ThingId.parse(thing)
        .filter(id -> analysis.unit().find(id).isEmpty())
        .filter(id -> standing.gone().stream().noneMatch(gone -> gone.thing().equals(id)))
        .isPresent();
  }

  /** What is signed anew since the last issue, field by field. */
  private List<String> changes(Set<ThingId> things) {
    return before
        .register()
        .ledgerHead()
        .map(head -> things.stream().flatMap(thing -> changes(thing, head)).toList())
        .orElse(List.of());
  }

  private Stream<String> changes(ThingId thing, Fingerprint head) {
    return changed.computeIfAbsent(thing, each -> changed(each, head)).stream();
  }

  private List<String> changed(ThingId id, Fingerprint head) {
    Unit whole = analysis.unit();
    return whole.find(id).flatMap(thing -> SignedFacts.of(whole, thing)).stream()
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
    Set<ThingId> held = new TreeSet<>(troubles.wrong());
    standing.signatures().stream()
        .filter(each -> !each.missing().isEmpty())
        .filter(each -> each.kind() != SignedKind.ASSET)
        .forEach(each -> held.add(each.thing().id()));
    return held;
  }
}
