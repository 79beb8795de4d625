package stackside.derive.signed;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stackside.derive.standing.Signers;
import stackside.model.Role;
import stackside.model.Thing;
import stackside.model.Unit;
import stackside.source.Location;
import stackside.source.Problem;

/**
 * The ledger together with the facts that its signatures cover.
 *
 * @param kept the signed JSON by the text of its fingerprint
 */
public record Approvals(Ledger ledger, SortedMap<String, Json.Members> kept) {

  public Approvals {
    kept = Collections.unmodifiableSortedMap(new TreeMap<>(kept));
  }

  public static Approvals none() {
    return new Approvals(Ledger.empty(), Collections.emptySortedMap());
  }

  /** The facts that a signature covers, if their copy was kept and is about the thing. */
  public Optional<Json.Members> factsUnder(Ledger.Entry entry) {
    return Optional.ofNullable(kept.get(entry.fingerprint().text()))
        .filter(json -> json.text("thing").filter(entry.thing().toString()::equals).isPresent())
        .flatMap(json -> json.member("facts"))
        .filter(Json.Members.class::isInstance)
        .map(Json.Members.class::cast);
  }

  /** What changed in a thing since it was last signed in any role; absent if it never was. */
  public Optional<SinceSigned> sinceSigned(SignedFacts now) {
    return ledger
        .lastAbout(now.thing())
        .map(Ledger.Line::entry)
        .flatMap(
            entry ->
                factsUnder(entry)
                    .map(facts -> new SinceSigned(entry, FactChange.between(facts, now.facts()))));
  }

  /** The last signature under a thing, and what changed since. */
  public record SinceSigned(Ledger.Entry entry, List<FactChange> changes) {
    public SinceSigned {
      changes = List.copyOf(changes);
    }
  }

  /** What changed in a thing since the ledger ended with a seal; nothing if it is new since. */
  public List<FactChange> changesSince(Fingerprint head, SignedFacts now) {
    Optional<Ledger.Entry> then = Optional.empty();
    for (Ledger.Line line : ledger.lines()) {
      if (line.entry().thing().equals(now.thing())) {
        then = Optional.of(line.entry());
      }
      if (line.seal().equals(head)) {
        break;
      }
    }
    return then.flatMap(this::factsUnder)
        .map(facts -> FactChange.between(facts, now.facts()))
        .orElse(List.of());
  }

  /** What is wrong with single signatures, as seen from a day. */
  public List<Problem> problems(LocalDate on) {
    List<Problem> problems = new ArrayList<>();
    int number = 1;
    for (Ledger.Line line : ledger.lines()) {
      number++;
      Location at = new Location(Ledger.FILE, number, 1, 0);
      problemsOf(line.entry(), at, on).forEach(problems::add);
    }
    return problems;
  }

  private List<Problem> problemsOf(Ledger.Entry entry, Location at, LocalDate on) {
    List<Problem> problems = new ArrayList<>();
    if (entry.date().isAfter(on)) {
      problems.add(
          LedgerFaults.DATED_AHEAD.at(
              at, "the signature is dated " + entry.date() + ", and today is " + on));
    }
    if (factsUnder(entry).isEmpty()) {
      problems.add(
          LedgerFaults.NEVER_SIGNED
              .at(
                  at,
                  "no copy of what was signed under "
                      + entry.fingerprint().shortText()
                      + " is in 'approved'")
              .help("bring the file back from a copy, or let the role sign again"));
    }
    return problems;
  }

  /** Whether a role has signed a thing as it is now. */
  public boolean signed(SignedFacts now, Role role) {
    Fingerprint fingerprint = now.fingerprint();
    return ledger.lines().stream()
        .map(Ledger.Line::entry)
        .anyMatch(
            entry ->
                entry.thing().equals(now.thing())
                    && entry.role().equals(role.id().slug())
                    && entry.fingerprint().equals(fingerprint));
  }

  /** The things that a role has still to sign, in the order of {@link SignedFacts#allOf}. */
  public List<SignedFacts> toSign(Unit unit, Role role) {
    return SignedFacts.allOf(unit)
        .filter(
            facts ->
                Signers.of(unit, facts.kind(), thing(unit, facts)).stream()
                    .anyMatch(each -> each.value().id().equals(role.id())))
        .filter(facts -> !signed(facts, role))
        .toList();
  }

  /** The thing that facts are about. */
  public static Thing thing(Unit unit, SignedFacts facts) {
    return unit.find(facts.thing()).orElseThrow();
  }
}
