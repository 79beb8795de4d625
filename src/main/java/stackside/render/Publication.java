package stackside.render;

import java.time.LocalDate;
import java.util.List;
import stackside.derive.Analysis;
import stackside.derive.edition.Editions;
import stackside.derive.signed.Approvals;
import stackside.model.Unit;
import stackside.model.UnitStatus;
import stackside.source.Fault;
import stackside.source.Problem;

/**
 * Everything that a renderer needs to make the pages and cards of one edition.
 *
 * @param problems sorted, without duplicates
 * @param faults every kind of mistake that has a page: rules in catalogue order, then reading
 *     faults
 * @param editions the edition printed on each card, and the register that it comes from
 * @param approvals what was signed
 * @param on the day for which the edition is made; never taken from the clock
 * @param words the program's words in the unit's language, or the unit's own
 */
public record Publication(
    Analysis analysis,
    List<Problem> problems,
    List<Fault> faults,
    Marking marking,
    Editions editions,
    Approvals approvals,
    LocalDate on,
    Words words) {

  public Publication {
    problems = List.copyOf(problems);
    faults = List.copyOf(faults);
  }

  /** A publication with the unit's words. */
  public Publication(
      Analysis analysis,
      List<Problem> problems,
      List<Fault> faults,
      Marking marking,
      Editions editions,
      Approvals approvals,
      LocalDate on) {
    this(analysis, problems, faults, marking, editions, approvals, on, Words.of(analysis.unit()));
  }

  /** The same publication with other words. */
  public Publication saying(Words others) {
    return new Publication(analysis, problems, faults, marking, editions, approvals, on, others);
  }

  /** A publication before anything was ever signed or issued. */
  public Publication(
      Analysis analysis,
      List<Problem> problems,
      List<Fault> faults,
      Marking marking,
      LocalDate on) {
    this(analysis, problems, faults, marking, Editions.none(), Approvals.none(), on);
  }

  public Unit unit() {
    return analysis.unit();
  }

  public boolean draft() {
    return marking == Marking.DRAFT;
  }

  /** Whether the unit is invented. Everything made from an invented unit must say so. */
  public boolean demonstration() {
    return unit().details().status().value() == UnitStatus.DEMONSTRATION;
  }
}
