package stackside.derive.signed;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stackside.source.Location;
import stackside.source.Problem;

/**
 * The ledger together with what its lines name: the facts that signatures cover, and what was in
 * force.
 *
 * @param kept the JSON by the text of its fingerprint
 */
public record Approvals(Ledger ledger, SortedMap<String, Json.Members> kept) {
  public Approvals {
    kept = Collections.unmodifiableSortedMap(new TreeMap<>(kept));
  }

  public static Approvals none() {
    return new Approvals(Ledger.empty(), Collections.emptySortedMap());
  }

  /** With one more line, and what it names. */
  public Approvals with(Ledger.Entry entry, Json.Members... named) {
    SortedMap<String, Json.Members> more = new TreeMap<>(kept);
    for (Json.Members each : named) {
      more.put(Fingerprint.of(each).text(), each);
    }
    return new Approvals(ledger.with(entry), more);
  }

  /** What counts on a day. */
  public Decisions on(LocalDate day) {
    return new Decisions(this, day);
  }

  /** The facts that a decision is about, if their copy was kept and is about the thing. */
  public Optional<Json.Members> factsUnder(Ledger.Decision decision) {
    return decision
        .facts()
        .map(facts -> kept.get(facts.text()))
        .filter(json -> json.text("thing").filter(decision.thing().toString()::equals).isPresent())
        .flatMap(json -> json.member("facts"))
        .filter(Json.Members.class::isInstance)
        .map(Json.Members.class::cast);
  }

  /** What changed in a thing since the ledger ended with a seal; nothing if it is new since. */
  public List<FactChange> changesSince(Fingerprint head, SignedFacts now) {
    Optional<Ledger.Decision> then = Optional.empty();
    for (Ledger.Line line : ledger.lines()) {
      if (line.entry() instanceof Ledger.Decision decision
          && decision.thing().equals(now.thing())) {
        then = Optional.of(decision);
      }
      if (line.seal().equals(head)) {
        break;
      }
    }
    return then.flatMap(this::factsUnder)
        .map(facts -> FactChange.between(facts, now.facts()))
        .orElse(List.of());
  }

  /** What is wrong with single lines, on a day that has come. */
  public List<Problem> problems(LocalDate today) {
    List<Problem> problems = new ArrayList<>();
    Optional<LocalDate> before = Optional.empty();
    int number = 1;
    for (Ledger.Line line : ledger.lines()) {
      number++;
      Location at = new Location(Ledger.FILE, number, 1, 0);
      LocalDate day = line.entry().day();
      if (day.isAfter(today)) {
        problems.add(
            LedgerFaults.DATED_AHEAD.at(
                at, "this line is dated " + day + ", and today is " + today));
      }
      before
          .filter(day::isBefore)
          .ifPresent(
              earlier ->
                  problems.add(
                      LedgerFaults.DATED_BACK.at(
                          at,
                          "this line is dated " + day + ", and the line before it " + earlier)));
      before = Optional.of(day);
      line.entry().names().stream()
          .filter(name -> !kept.containsKey(name))
          .findFirst()
          .ifPresent(name -> problems.add(notKept(name, at)));
    }
    return problems;
  }

  private static Problem notKept(String name, Location at) {
    return LedgerFaults.NEVER_SIGNED
        .at(
            at,
            "no copy of what this line names, "
                + new Fingerprint(name).shortText()
                + ", is in 'approved'")
        .help("bring the file back from a copy, or let the role sign again");
  }
}
