package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds lines so close that the eye slips from one to the next. */
final class LinesTooClose implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "lines-too-close",
          Severity.ERROR,
          "lines on a card are closer than 1.25 sizes of their type");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final double LEAST = 1.25;

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Problem> problems = new ArrayList<>();
    List<PrintedWords> words = card.seen().words();
    for (PrintedWords upper : words) {
      for (PrintedWords lower : words) {
        if (below(upper, lower) && pitch(upper, lower) < LEAST - 0.01) {
          problems.add(
              FAULT.at(
                  card.at(lower),
                  "'" + lower.text() + "' is too close under '" + upper.text() + "'"));
        }
      }
    }
    return problems;
  }

  /** Base line to base line, in sizes of the lower line. */
  private static double pitch(PrintedWords upper, PrintedWords lower) {
    return (lower.base() - upper.base()) / (lower.points() * PdfReader.MILLIMETRES);
  }

  private static boolean below(PrintedWords upper, PrintedWords lower) {
    boolean sameColumn =
        upper.box().left() < lower.box().right() && lower.box().left() < upper.box().right();
    return sameColumn && upper.roles().equals(lower.roles()) && lower.base() - upper.base() > 0.5;
  }
}
