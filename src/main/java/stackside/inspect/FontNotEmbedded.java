package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds fonts that another computer would replace, and a third typeface. */
final class FontNotEmbedded implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "font-not-embedded",
          Severity.ERROR,
          "a card uses a font that it does not carry, or more than two families");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final int MOST = 2;

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Problem> problems = new ArrayList<>();
    for (EmbeddedFont font : card.seen().fonts()) {
      if (!font.embedded()) {
        problems.add(FAULT.at(card.at(), card.name() + " does not carry its font " + font.bare()));
      }
    }
    List<String> families =
        card.seen().fonts().stream()
            .map(font -> font.bare().replaceFirst("-.*", ""))
            .distinct()
            .sorted()
            .toList();
    if (families.size() > MOST) {
      problems.add(FAULT.at(card.at(), card.name() + " is set in " + String.join(", ", families)));
    }
    return problems;
  }
}
