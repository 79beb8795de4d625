package stackside.check;

import static stackside.check.Rule.error;
import static stackside.check.Rule.warning;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import stackside.derive.handbook.Claim;
import stackside.derive.handbook.Grounds;
import stackside.model.HandbookPage;

/** What the text of the handbook rests on. */
final class HandbookRules {

  private HandbookRules() {}

  static List<Rule<CheckedUnit>> rules() {
    return List.of(
        warning(
            "paragraph-without-source",
            "a paragraph of the handbook ends in no note and in no mark",
            HandbookRules::paragraphWithoutSource),
        error(
            "claim-incomplete",
            "a note of the handbook and the table of claims do not fit each other",
            HandbookRules::claimIncomplete));
  }

  private static List<Finding> paragraphWithoutSource(CheckedUnit checked) {
    return checked.unit().handbook().stream()
        .flatMap(page -> Grounds.of(page).groundless().stream())
        .map(
            at ->
                Finding.at(at, "this does not say how it is known")
                    .help(
                        "end it in the number of a claim such as '[1]', in"
                            + " '*Common practice, no source.*', in '*The unit's own.*' or in"
                            + " '*Not known.*'"))
        .toList();
  }

  private static List<Finding> claimIncomplete(CheckedUnit checked) {
    return checked.unit().handbook().stream()
        .flatMap(page -> claimIncomplete(page, Grounds.of(page)).stream())
        .toList();
  }

  private static List<Finding> claimIncomplete(HandbookPage page, Grounds grounds) {
    List<Finding> found = new ArrayList<>();
    Set<Integer> numbers = new TreeSet<>();
    for (Claim claim : grounds.claims()) {
      if (!numbers.add(claim.number())) {
        found.add(
            Finding.at(claim.words().at(), "claim %d stands twice".formatted(claim.number())));
      }
      if (!claim.isComplete()) {
        found.add(
            Finding.at(claim.words().at(), "claim %d has an empty cell".formatted(claim.number()))
                .help(
                    "write what is claimed, a link to its source such as '<source:id>', and who"
                        + " says otherwise or 'nobody found'"));
      }
      if (!grounds.notes().contains(claim.number())) {
        found.add(
            Finding.at(
                    claim.words().at(),
                    "nothing on the page rests on claim %d".formatted(claim.number()))
                .help("put its number behind what it supports, or remove the row"));
      }
    }
    new TreeSet<>(grounds.notes())
        .stream()
            .filter(note -> !numbers.contains(note))
            .forEach(
                note ->
                    found.add(
                        Finding.at(
                                page.at(),
                                "note %d has no row in the table of claims".formatted(note))
                            .help("add the row, or correct the number")));
    return found;
  }
}
