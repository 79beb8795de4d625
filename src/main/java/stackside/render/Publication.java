package stackside.render;

import java.time.LocalDate;
import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Unit;
import stackside.model.UnitStatus;
import stackside.source.Problem;

/**
 * Everything that a renderer needs to make the pages and cards of one edition.
 *
 * @param problems sorted, each once
 * @param rules every rule and fault of reading, in the order of the catalogue
 * @param on the day that the edition is made for; never the clock's
 */
public record Publication(
    Analysis analysis,
    List<Problem> problems,
    List<RuleText> rules,
    Marking marking,
    LocalDate on) {

  public Publication {
    problems = List.copyOf(problems);
    rules = List.copyOf(rules);
  }

  public Unit unit() {
    return analysis.unit();
  }

  public boolean draft() {
    return marking == Marking.DRAFT;
  }

  /** Whether the unit is invented, which everything that is made of it must say. */
  public boolean demonstration() {
    return unit().details().status().value() == UnitStatus.DEMONSTRATION;
  }
}
