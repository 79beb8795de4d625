package stackside.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import stackside.derive.edition.Books;
import stackside.derive.edition.CardEntry;
import stackside.derive.edition.Decision;
import stackside.derive.edition.Decision.Outcome;
import stackside.derive.edition.Issue;
import stackside.derive.edition.Register;
import stackside.derive.edition.RegisterEntry;

/** The lists for whoever walks round with the laminates, one line for each card. */
final class IssueLists {
  private final List<Decision> decisions;
  private final Register before;
  private final List<String> lines = new ArrayList<>();

  private IssueLists(List<Decision> decisions, Register before) {
    this.decisions = decisions;
    this.before = before;
  }

  static List<String> of(Issuing.Ready ready, Books books, List<String> altered) {
    IssueLists lists = new IssueLists(ready.issue().decisions(), books.register());
    if (ready.after().register().equals(books.register())) {
      books.register().last().map(IssueLists::unchanged).ifPresent(lists.lines::add);
    }
    altered.forEach(
        path ->
            lists.lines.add("the file " + path + " was not as it was issued; it was made right"));
    lists.lines.removeIf(line -> ready.lost().stream().anyMatch(line::contains));
    books.lost().forEach(lists::lost);
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
    lists
        .with(Outcome.STAYS_DOWN)
        .filter(each -> !each.reason().equals(Issue.NO_SUCH_CARD))
        .forEach(each -> lists.lines.add("stays down: " + down(each)));
    lists.list("not issued yet: ", Outcome.NOT_YET, each -> each.name() + ": " + each.reason());
    ready
        .lost()
        .forEach(
            path ->
                lists.lines.add(
                    "the file "
                        + path
                        + " of an edition in use is lost, or not as it was issued; bring it back from"
                        + " a copy of the site folder"));
    return lists.lines;
  }

  /** An issue that was begun and never reached the folder may have left prints all the same. */
  private void lost(RegisterEntry entry) {
    lines.add(
        "issue "
            + entry.number()
            + " of "
            + entry.on()
            + " was begun and lost; its number and its editions are not given again");
    entry.cards().stream()
        .filter(CardEntry::current)
        .forEach(card -> lines.add("take down, if it was printed: " + taken(card)));
  }

  private static String down(Decision decision) {
    return taken(decision.entry().orElseThrow()) + ": " + decision.reason();
  }

  private static String unchanged(RegisterEntry last) {
    return "nothing has changed since "
        + last.deed().word()
        + " "
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

  /** A card that hangs somewhere, in words that help to find it. */
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
