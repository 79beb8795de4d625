package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds words with less contrast than 7 to 1, or 4.5 to 1 in large type. */
final class TextContrastTooLow implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "text-contrast-too-low",
          Severity.ERROR,
          "words on a card stand out too little from their ground");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final double LEAST = 7;
  private static final double LEAST_LARGE = 4.5;

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Problem> problems = new ArrayList<>();
    for (PrintedWords words : card.seen().words()) {
      double contrast = words.colour().contrast(card.seen().ground(words));
      if (contrast < (large(words) ? LEAST_LARGE : LEAST)) {
        problems.add(
            FAULT.at(
                card.at(words),
                "'"
                    + words.text()
                    + "' stands out "
                    + Height.number(contrast)
                    + " to 1 from its ground"));
      }
    }
    return problems;
  }

  private static boolean large(PrintedWords words) {
    return words.points() >= 18 || (words.points() >= 14 && words.font().contains("Bold"));
  }
}
