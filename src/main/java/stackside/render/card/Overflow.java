package stackside.render.card;

import java.util.List;
import java.util.stream.Collectors;
import stackside.render.plan.AnswerRow;
import stackside.render.plan.Block;
import stackside.render.plan.CardFaults;
import stackside.render.plan.CardPlan;
import stackside.render.plan.Face;
import stackside.source.Problem;

/** Says by how much a card is too high for its page, and what to move. */
final class Overflow {
  private Overflow() {}

  static Problem of(CardPlan plan, CardPage page) {
    Problem problem =
        CardFaults.CARD_OVERFLOWS_PAGE.at(
            plan.part().map(part -> part.at()).orElse(plan.room().at()),
            "the card '"
                + plan.title()
                + "' of "
                + plan.room().title()
                + ", "
                + plan.asset().title()
                + " is "
                + Millimetre.words(page.overflow())
                + " too high for its page");
    return plan.face() == Face.SETTINGS
        ? problem.help(rows(plan, page))
        : problem.help(steps(plan));
  }

  private static String rows(CardPlan plan, CardPage page) {
    List<AnswerRow> rows = plan.blocks(Block.Answers.class).get(0).rows();
    List<Double> heights = page.answers().map(AnswersElement::rowHeights).orElse(List.of());
    double all = heights.stream().mapToDouble(Double::doubleValue).sum();
    List<CardSplit> cards = CardSplit.of(plan, rows, heights, all - page.overflow());
    return cards.size() > 1
        ? "divide the rows between "
            + cards.size()
            + " cards with `cards:` in the room: "
            + cards.stream().map(CardSplit::words).collect(Collectors.joining("; "))
        : "all rows answer one lesion at one site: shorten their cautions and alternatives, or remove"
            + " an alternative from the profiles";
  }

  private static String steps(CardPlan plan) {
    String drills =
        plan.blocks(Block.Drilled.class).stream()
            .map(drill -> "'" + drill.title().words() + "'")
            .collect(Collectors.joining(", "));
    return "shorten steps that take two lines, or remove a drill with `on-card: no`; the card"
        + " has "
        + drills;
  }
}
