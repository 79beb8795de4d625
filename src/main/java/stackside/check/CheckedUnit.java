package stackside.check;

import java.time.LocalDate;
import stackside.derive.Analysis;
import stackside.model.Unit;

/**
 * What the rules about content look at: a unit, all that follows from it, and the day.
 *
 * @param day the day as of which the unit is checked
 */
public record CheckedUnit(Analysis analysis, LocalDate day) {

  Unit unit() {
    return analysis.unit();
  }
}
