package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Finds values more than 20 mm from their label without a row of dots between, and rows of a table
 * without a rule.
 */
final class ValueFarFromLabel implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "value-far-from-label",
          Severity.ERROR,
          "a value stands far from its label, with nothing to lead the eye");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final double FAR = 20;

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Problem> problems = new ArrayList<>();
    List<PrintedWords> words = card.seen().words();
    for (PrintedWords label : words) {
      for (PrintedWords value : words) {
        if (pair(label, value) && !led(card, label, value)) {
          problems.add(
              FAULT.at(
                  card.at(label),
                  "'"
                      + value.text()
                      + "' stands "
                      + Height.words(value.box().left() - label.box().right())
                      + " from '"
                      + label.text()
                      + "'"));
        }
      }
    }
    return problems;
  }

  private static boolean pair(PrintedWords label, PrintedWords value) {
    return label.roles().contains("LBody")
        && value.roles().contains("LBody")
        && Math.abs(label.base() - value.base()) < 0.1
        && value.box().left() - label.box().right() > FAR;
  }

  private static boolean led(InspectedCard card, PrintedWords label, PrintedWords value) {
    return card.seen().areas().stream()
        .anyMatch(
            area ->
                area.box().left() - label.box().right() < FAR / 4
                    && value.box().left() - area.box().right() < FAR / 4
                    && area.box().top() < label.base()
                    && area.box().bottom() > label.box().top());
  }
}
