package stackside.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import stackside.derive.edition.CardEntry;
import stackside.derive.edition.Decision;
import stackside.derive.edition.Decision.Outcome;
import stackside.derive.edition.Register;
import stackside.derive.edition.RegisterEntry;

/** The lists for whoever walks round with the laminates, a card a line. */
final class IssueLists {
  private final List<Decision> decisions;
  private final Register before;
  private final List<String> lines = new ArrayList<>();

  private IssueLists(List<Decision> decisions, Register before) {
    this.decisions = decisions;
    this.before = before;
  }

  static List<String> of(Issuing.Ready ready, Register before) {
    IssueLists lists = new IssueLists(ready.issue().decisions(), before);
    if (ready.register().equals(before)) {
      before.last().map(IssueLists::unchanged).ifPresent(lists.lines::add);
    }
    lists.list("print these: ", Outcome.NEXT_EDITION, IssueLists::printed);
    lists.with(Outcome.NEXT_EDITION).flatMap(lists::replaced).forEach(lists.lines::add);
    lists.list(
        "take down: ",
        Outcome.OUT_OF_USE,
        each -> taken(each.entry().orElseThrow()) + ", out of use: " + each.reason());
    lists.list(
        "stays up: ",
        Outcome.STAYS,
        each -> taken(each.entry().orElseThrow()) + ", not replaced: " + each.reason());
    lists.list("not issued yet: ", Outcome.NOT_YET, each -> each.name() + ": " + each.reason());
    ready
        .lost()
        .forEach(path -> lists.lines.add("the file " + path + " of an edition in use is lost"));
    return lists.lines;
  }

  private static String unchanged(RegisterEntry last) {
    return "nothing has changed since issue "
        + last.number()
        + " of "
        + last.on()
        + "; nothing was written";
  }

  private Stream<Decision> with(Outcome outcome) {
    return decisions.stream().filter(each -> each.outcome() == outcome);
  }

  private void list(String heading, Outcome outcome, Function<Decision, String> words) {
    with(outcome).map(words).forEach(each -> lines.add(heading + each));
  }

  private static String printed(Decision decision) {
    CardEntry card = decision.entry().orElseThrow();
    return card.title()
        + ", edition "
        + card.edition()
        + ", "
        + card.copiesInWords()
        + " of "
        + card.path()
        + ": "
        + decision.reason();
  }

  private Stream<String> replaced(Decision decision) {
    Optional<CardEntry> hanging = before.card(decision.name()).filter(CardEntry::current);
    return hanging.stream()
        .map(card -> "take down: " + taken(card) + ", replaced: " + decision.reason());
  }

  /** A card that hangs somewhere, in words that find it. */
  static String taken(CardEntry card) {
    return card.title()
        + ", edition "
        + card.edition()
        + " of "
        + card.since()
        + ", "
        + card.copiesInWords();
  }
}
