package stackside.render;

import java.time.LocalDate;
import java.util.List;
import stackside.derive.Analysis;
import stackside.derive.edition.Editions;
import stackside.model.Unit;
import stackside.model.UnitStatus;
import stackside.source.Fault;
import stackside.source.Problem;

/**
 * Everything that a renderer needs to make the pages and cards of one edition.
 *
 * @param problems sorted, each once
 * @param faults every kind of mistake that has a page: rules in the order of the catalogue, then
 *     faults of reading
 * @param editions the edition that each card bears, and the register that it comes from
 * @param on the day that the edition is made for; never the clock's
 * @param words the program's own, in the unit's language
 */
public record Publication(
    Analysis analysis,
    List<Problem> problems,
    List<Fault> faults,
    Marking marking,
    Editions editions,
    LocalDate on,
    Words words) {

  public Publication {
    problems = List.copyOf(problems);
    faults = List.copyOf(faults);
  }

  /** A publication in the program's own words for the unit's language. */
  public Publication(
      Analysis analysis,
      List<Problem> problems,
      List<Fault> faults,
      Marking marking,
      Editions editions,
      LocalDate on) {
    this(
        analysis,
        problems,
        faults,
        marking,
        editions,
        on,
        Words.in(analysis.unit().details().language().value()));
  }

  /** The same in other words. */
  public Publication saying(Words others) {
    return new Publication(analysis, problems, faults, marking, editions, on, others);
  }

  /** A publication before anything was ever issued. */
  public Publication(
      Analysis analysis,
      List<Problem> problems,
      List<Fault> faults,
      Marking marking,
      LocalDate on) {
    this(analysis, problems, faults, marking, Editions.none(), on);
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
