package stackside.check;

import java.util.List;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.derive.program.ReadingDay;
import stackside.model.ProgramReading;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Asks about slots of which one pedal was read, where both were read of others of the generator on
 * that day.
 */
final class SlotReadInPart implements Rule {
  private static final Fault FAULT =
      new Fault(
          "slot-read-in-part",
          Severity.WARNING,
          "one pedal of a slot was read, and both of the other slots");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return ReadingDay.of(analysis.unit()).stream().flatMap(SlotReadInPart::inPart).toList();
  }

  private static Stream<Problem> inPart(ReadingDay day) {
    return day.slots().stream().noneMatch(rows -> pedals(rows) > 1)
        ? Stream.empty()
        : day.slots().stream().filter(rows -> pedals(rows) == 1).map(rows -> problem(rows.get(0)));
  }

  private static long pedals(List<ProgramReading> rows) {
    return rows.stream().map(row -> row.pedal().value()).distinct().count();
  }

  private static Problem problem(ProgramReading row) {
    return FAULT
        .at(
            row.slot().at(),
            "of slot %s of %s only the %s pedal was read on %s, and of other slots both"
                .formatted(
                    row.slot().value(),
                    Wording.quoted(row.asset().value()),
                    row.pedal().value().word(),
                    row.date().value()))
        .help("look for a mistyped slot, or read the other pedal too, be it unassigned");
  }
}
