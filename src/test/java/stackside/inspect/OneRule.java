package stackside.inspect;

import java.util.List;
import stackside.check.Rule;
import stackside.source.Problem;

/** One rule about cards, alone. */
final class OneRule {
  private OneRule() {}

  /** What the rule of this id finds on a card. */
  static List<Problem> finds(String id, InspectedCard card) {
    Rule<InspectedCard> rule =
        CardRules.catalogue().rules().stream()
            .filter(each -> each.fault().id().equals(id))
            .findFirst()
            .orElseThrow();
    return rule.problems(card);
  }
}
