package stackside.render.card;

import java.util.ArrayList;
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
                + " higher than its page");
    return plan.face() == Face.SETTINGS
        ? problem.help(rows(plan, page))
        : problem.help(steps(plan));
  }

  private static String rows(CardPlan plan, CardPage page) {
    List<AnswerRow> rows = plan.blocks(Block.Answers.class).get(0).rows();
    List<Double> heights = page.answers().map(AnswersPiece::rowHeights).orElse(List.of());
    double over = page.overflow();
    List<String> moved = new ArrayList<>();
    for (int i = rows.size() - 1; i > 0 && over > 0; i--) {
      moved.add(0, "'" + rows.get(i).scopes().get(0).what().words() + "'");
      over -= heights.get(i);
    }
    return "share the rows out over several cards with `cards:` in the room, as in {name: "
        + "lower, sites: [...]} and {name: upper, sites: [...]}; the rows that do not fit here are "
        + String.join(", ", moved);
  }

  private static String steps(CardPlan plan) {
    String drills =
        plan.blocks(Block.Drilled.class).stream()
            .map(drill -> "'" + drill.title().words() + "'")
            .collect(Collectors.joining(", "));
    return "shorten steps that take two lines, or take a drill off the card with `on-card: no`; it"
        + " holds "
        + drills;
  }
}
