package stackside.check;

import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.derive.program.ReadingDay;
import stackside.model.Fact;
import stackside.model.ProgramReading;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Finds readings of one slot on one day that cannot both be right: two names or sockets for the
 * slot, or two settings for one pedal.
 */
final class SlotReadTwoWays implements Rule {
  private static final Fault FAULT =
      new Fault("slot-read-two-ways", Severity.ERROR, "one slot was read in two ways on one day");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return ReadingDay.of(analysis.unit()).stream()
        .flatMap(day -> day.slots().stream())
        .flatMap(rows -> check(rows).stream())
        .toList();
  }

  /** One problem a slot: the rows after the first mistyped one tell nothing more. */
  private static Optional<Problem> check(List<ProgramReading> rows) {
    for (int later = 1; later < rows.size(); later++) {
      for (ProgramReading earlier : rows.subList(0, later)) {
        Optional<Problem> problem = between(earlier, rows.get(later));
        if (problem.isPresent()) {
          return problem;
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Problem> between(ProgramReading earlier, ProgramReading later) {
    if (!earlier.shownAs().value().equals(later.shownAs().value())) {
      return Optional.of(
          problem(
              later,
              later.shownAs(),
              earlier.shownAs(),
              "the display showed '%s' and '%s'"
                  .formatted(earlier.shownAs().value(), later.shownAs().value())));
    }
    if (!earlier.socket().value().id().equals(later.socket().value().id())) {
      return Optional.of(
          problem(
              later,
              later.socket(),
              earlier.socket(),
              "it was for socket %s and for socket %s"
                  .formatted(
                      Wording.quoted(earlier.socket().value()),
                      Wording.quoted(later.socket().value()))));
    }
    boolean twice = earlier.pedal().value() == later.pedal().value();
    return twice && !contents(earlier).equals(contents(later))
        ? Optional.of(
            problem(
                later,
                later.pedal(),
                earlier.pedal(),
                "the %s pedal had two settings".formatted(later.pedal().value().word())))
        : Optional.empty();
  }

  private static List<Object> contents(ProgramReading row) {
    return List.of(
        row.mode().map(mode -> mode.value().id()),
        row.level().map(Fact::value),
        row.limit().map(Fact::value));
  }

  private static Problem problem(
      ProgramReading row, Fact<?> later, Fact<?> earlier, String difference) {
    return FAULT
        .at(
            later.at(),
            "slot %s of %s was read in two ways on %s: %s"
                .formatted(
                    row.slot().value(),
                    Wording.quoted(row.asset().value()),
                    row.date().value(),
                    difference))
        .note(earlier.at(), "the other reading of that day")
        .help("read the slot again, and keep the lines that the machine shows");
  }
}
