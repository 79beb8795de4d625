package stackside.derive.edition;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.signed.Approvals;
import stackside.derive.signed.Deed;
import stackside.derive.signed.Fingerprint;
import stackside.derive.signed.Json;
import stackside.derive.signed.Ledger;
import stackside.source.Location;
import stackside.source.Problem;
import stackside.source.SheetRow;

/**
 * The two books of a unit: its ledger, which lies with the content, and its register, which lies
 * with the site. Each names the other, for the two folders have no common commit. Everything that
 * is decided is decided here, and nothing is rendered: an issue, a withdrawal and a lifting turn
 * one pair of books into the next.
 */
public record Books(Approvals approvals, Register register) {

  /** How ledger and register stand to each other. */
  public enum Match {
    /** Each tells of all that the other does. */
    IN_STEP,
    /** The ledger tells of an issue that never reached the site folder. */
    ISSUE_LOST,
    /** The ledger tells of more: the site folder is an older copy. */
    SITE_OLDER,
    /**
     * The register tells of an issue that the ledger does not know: the ledger is an older copy, or
     * cut off.
     */
    LEDGER_OLDER,
    /** Both tell of what the other does not know. */
    APART
  }

  public Ledger ledger() {
    return approvals.ledger();
  }

  /** What the ledger tells of after the last deed that both know. */
  private List<Ledger.Act> beyondRegister() {
    List<Fingerprint> known = register.lines().stream().map(Register.Line::seal).toList();
    List<Ledger.Act> beyond = new ArrayList<>();
    for (Ledger.Act act : ledger().acts()) {
      if (known.contains(act.register())) {
        beyond.clear();
      } else {
        beyond.add(act);
      }
    }
    return beyond;
  }

  /** What the register tells of and the ledger does not. */
  private List<Register.Line> beyondLedger() {
    List<Fingerprint> known = ledger().acts().stream().map(Ledger.Act::register).toList();
    return register.lines().stream().filter(line -> !known.contains(line.seal())).toList();
  }

  /**
   * Withdrawals that were made with the site folder alone count, and liftings that were cut short;
   * the ledger learns of them.
   */
  private boolean canBeAdopted() {
    return beyondLedger().stream().noneMatch(line -> line.entry().deed() == Deed.ISSUE)
        && register.ledgerHead().map(ledger()::reaches).orElse(true);
  }

  public Match match() {
    List<Ledger.Act> beyond = beyondRegister();
    if (!canBeAdopted()) {
      return beyond.isEmpty() ? Match.LEDGER_OLDER : Match.APART;
    }
    if (beyond.isEmpty()) {
      return Match.IN_STEP;
    }
    if (beyond.stream().allMatch(this::wasBegunFromHere)) {
      return Match.ISSUE_LOST;
    }
    return beyondLedger().isEmpty() ? Match.SITE_OLDER : Match.APART;
  }

  /** Whether an issue was begun from the register as both know it, and never reached the site. */
  private boolean wasBegunFromHere(Ledger.Act act) {
    Optional<Fingerprint> common =
        register.upTo(register.lines().size() - beyondLedger().size()).head();
    return act.deed() == Deed.ISSUE
        && told(act).filter(each -> each.before().equals(common)).isPresent();
  }

  private Optional<Register.Sealed> told(Ledger.Act act) {
    return Optional.ofNullable(approvals.kept().get(act.register().text()))
        .flatMap(Register::sealed);
  }

  /** What is wrong between the two books, and what to do; nothing where they go on together. */
  public List<Problem> problems() {
    return switch (match()) {
      case IN_STEP, ISSUE_LOST -> List.of();
      case SITE_OLDER -> List.of(siteOlder());
      case LEDGER_OLDER -> List.of(ledgerOlder());
      case APART -> List.of(apart());
    };
  }

  private Problem siteOlder() {
    List<Ledger.Act> beyond = beyondRegister();
    Ledger.Act last = beyond.get(beyond.size() - 1);
    return BookFaults.SITE_OLDER
        .at(
            at(beyond.get(0)),
            "the ledger tells of "
                + words(beyond.get(0))
                + ", and the site folder does not: it is an older copy")
        .help(
            "bring back the copy of the site folder that "
                + words(last)
                + " left; until then only 'withdraw' works on it. If that copy is lost for good,"
                + " issue with --site-lost");
  }

  private Problem ledgerOlder() {
    return BookFaults.SHORTENED
        .at(
            Location.startOf(Ledger.FILE),
            "the site folder tells of "
                + beyondLedger().stream()
                    .map(Register.Line::entry)
                    .findFirst()
                    .or(register::last)
                    .map(Books::words)
                    .orElse("an issue")
                + ", and the ledger lacks lines that it had then")
        .help("bring the ledger back from a copy, together with 'approved'");
  }

  private Problem apart() {
    Stream<String> theirs = beyondRegister().stream().limit(1).map(Books::words);
    Stream<String> ours = beyondLedger().stream().limit(1).map(line -> words(line.entry()));
    return BookFaults.APART
        .at(
            Location.startOf(Ledger.FILE),
            "the content and the site folder went on apart: the ledger tells of "
                + theirs.collect(Collectors.joining())
                + ", and the site folder of "
                + ours.collect(Collectors.joining()))
        .help(
            "decide which of the two is right, and bring the other back from the copy that belongs"
                + " to it");
  }

  private Location at(Ledger.Act act) {
    List<Ledger.Entry> entries = ledger().lines().stream().map(Ledger.Line::entry).toList();
    return new Location(Ledger.FILE, entries.indexOf(act) + 2, 1, 0);
  }

  private static String words(Ledger.Act act) {
    return act.deed().word() + " " + act.number() + " of " + act.day();
  }

  private static String words(RegisterEntry entry) {
    return entry.deed().word() + " " + entry.number() + " of " + entry.on();
  }

  /** The issues that were begun since the last one and never reached the site folder. */
  public List<RegisterEntry> lost() {
    return ledger().acts().stream()
        .filter(act -> act.deed() == Deed.ISSUE && act.number() > register.last(Deed.ISSUE))
        .flatMap(act -> told(act).stream())
        .map(Register.Sealed::entry)
        .toList();
  }

  /** Why nothing can be decided on a day, if so: no day runs backwards, and none lies ahead. */
  public Optional<String> refused(LocalDate on, LocalDate today) {
    if (on.isAfter(today)) {
      return Optional.of(on + " lies ahead, and today is " + today);
    }
    return Stream.concat(
            ledger().lastDay().stream(), register.last().map(RegisterEntry::on).stream())
        .filter(on::isBefore)
        .max(LocalDate::compareTo)
        .map(
            last -> "something was decided on " + last + " already, and " + on + " is before that");
  }

  /** The highest edition that each card was ever given, by what either book knows. */
  Map<String, Integer> editionsGiven() {
    Stream<RegisterEntry> acted =
        ledger().acts().stream().flatMap(act -> told(act).stream()).map(Register.Sealed::entry);
    return Stream.concat(register.entries().stream(), acted)
        .flatMap(entry -> entry.cards().stream())
        .collect(Collectors.toMap(CardEntry::name, CardEntry::edition, Math::max));
  }

  /** Whether a generator was signed again since a card of it came down for not being in use. */
  boolean signedSince(CardEntry card) {
    Optional<Fingerprint> down =
        register.lines().stream()
            .filter(line -> line.entry().cards().stream().anyMatch(each -> each.equals(card)))
            .map(Register.Line::seal)
            .reduce((earlier, later) -> later);
    boolean since = false;
    for (Ledger.Line line : ledger().lines()) {
      Ledger.Entry entry = line.entry();
      if (entry instanceof Ledger.Act act) {
        since &= !down.equals(Optional.of(act.register()));
      } else if (entry instanceof Ledger.Decision decision) {
        since |= decision.thing().toString().equals(Stop.asset(card.asset()));
      } else {
        throw new IllegalStateException("a line of no known kind: " + entry);
      }
    }
    return since;
  }

  /** The number that the next deed of a kind gets; none is ever given twice. */
  public int next(Deed deed) {
    return Math.max(register.last(deed), ledger().last(deed)) + 1;
  }

  /** The books once the ledger knows of withdrawals that were made with the site folder alone. */
  public Books adopted() {
    Books books = this;
    if (match() == Match.IN_STEP || match() == Match.ISSUE_LOST) {
      int from = register.lines().size() - beyondLedger().size();
      for (int i = from; i < register.lines().size(); i++) {
        books = new Books(books.noted(register.upTo(i + 1), ""), register);
      }
    }
    return books;
  }

  /** The register as the ledger and what is kept beside it tell it; for a site that is lost. */
  public Optional<Register> rebuilt() {
    Map<String, Json.Members> kept = approvals.kept();
    List<RegisterEntry> backwards = new ArrayList<>();
    Optional<Fingerprint> head =
        ledger().acts().stream().map(Ledger.Act::register).reduce((earlier, later) -> later);
    while (head.isPresent()) {
      Optional<Register.Sealed> told =
          Optional.ofNullable(kept.get(head.get().text())).flatMap(Register::sealed);
      if (told.isEmpty()) {
        return Optional.empty();
      }
      backwards.add(told.get().entry());
      head = told.get().before();
    }
    Register register = Register.none();
    for (int i = backwards.size() - 1; i >= 0; i--) {
      register = register.with(backwards.get(i));
    }
    return Optional.of(register);
  }

  /** What the last issue put in force: the fingerprint of the facts of each thing, by its id. */
  public SortedMap<String, String> inForce() {
    SortedMap<String, String> things = new TreeMap<>();
    register
        .manifest()
        .map(manifest -> approvals.kept().get(manifest.text()))
        .flatMap(manifest -> manifest.member("things"))
        .filter(Json.Members.class::isInstance)
        .ifPresent(
            members ->
                ((Json.Members) members)
                    .values()
                    .forEach(
                        (thing, facts) -> {
                          if (facts instanceof Json.Text text) {
                            things.put(thing, text.value());
                          }
                        }));
    return things;
  }

  /** What an issue puts in force, as it is kept beside the ledger. */
  public static Json.Members manifest(Map<String, String> things) {
    SortedMap<String, Json> facts = new TreeMap<>();
    things.forEach((thing, print) -> facts.put(thing, Json.text(print)));
    return Json.members(Map.of("format", Json.number(1), "things", Json.members(facts)));
  }

  /** What an issue writes, before it is known which files it leaves. */
  public RegisterEntry entry(Issue issue, Json.Members manifest, Collection<SheetRow> records) {
    List<RegisterEntry> lost = lost();
    return new RegisterEntry(
        Deed.ISSUE,
        next(Deed.ISSUE),
        issue.on(),
        Optional.empty(),
        ledger().head(),
        Optional.of(Fingerprint.of(manifest)),
        Optional.empty(),
        issue.changed(),
        issue.stops(),
        List.of(),
        Records.toKeep(register, records),
        lost.isEmpty()
            ? ""
            : lost.stream().map(Books::words).collect(Collectors.joining(", "))
                + " was begun and lost");
  }

  /** Whether an issue would only repeat the last one. */
  public boolean repeats(RegisterEntry entry) {
    return match() == Match.IN_STEP
        && entry.saysNothing()
        && entry.manifest().equals(register.manifest())
        && register.last().filter(last -> last.deed() == Deed.ISSUE).isPresent();
  }

  /** The books after an issue. */
  public Books issued(RegisterEntry entry, Json.Members manifest) {
    Register after = register.with(entry);
    return new Books(noted(after, "", manifest), after);
  }

  /** What a withdrawal writes. */
  public RegisterEntry withdrawal(LocalDate on, String role, List<CardEntry> down, Stop stop) {
    return new RegisterEntry(
        Deed.WITHDRAWAL,
        next(Deed.WITHDRAWAL),
        on,
        Optional.of(role),
        ledger().head().or(register::ledgerHead),
        register.manifest(),
        Optional.empty(),
        down,
        List.of(stop),
        List.of(),
        List.of(),
        stop.why());
  }

  /** What a lifting writes. */
  public RegisterEntry lifting(LocalDate on, String role, List<String> what, String why) {
    return new RegisterEntry(
        Deed.LIFTING,
        next(Deed.LIFTING),
        on,
        Optional.of(role),
        ledger().head(),
        register.manifest(),
        Optional.empty(),
        List.of(),
        List.of(),
        what,
        List.of(),
        why);
  }

  /** The books after a withdrawal or a lifting. */
  public Books with(RegisterEntry entry, String initials) {
    Register after = register.with(entry);
    return new Books(noted(after, initials), after);
  }

  /** The ledger once it tells of the last entry of a register. */
  private Approvals noted(Register after, String initials, Json.Members... more) {
    RegisterEntry entry = after.last().orElseThrow();
    List<Json.Members> named = new ArrayList<>(List.of(more));
    named.add(after.lastSealed());
    return approvals.with(
        new Ledger.Act(
            entry.on(),
            entry.deed(),
            entry.number(),
            after.head().orElseThrow(),
            entry.manifest(),
            entry.by().orElse(""),
            initials),
        named.toArray(Json.Members[]::new));
  }
}
