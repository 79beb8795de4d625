package stackside.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stackside.derive.Analysis;
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
    List<Problem> found = new ArrayList<>();
    analysis.unit().programReadings().stream()
        .collect(
            Collectors.groupingBy(
                row -> List.of(row.asset().value().id(), row.date().value()),
                LinkedHashMap::new,
                Collectors.toList()))
        .values()
        .forEach(day -> found.addAll(inPart(day)));
    return found;
  }

  private static List<Problem> inPart(List<ProgramReading> day) {
    Map<Integer, List<ProgramReading>> slots =
        day.stream()
            .collect(
                Collectors.groupingBy(
                    row -> row.slot().value(), LinkedHashMap::new, Collectors.toList()));
    if (slots.values().stream().noneMatch(rows -> pedals(rows) > 1)) {
      return List.of();
    }
    return slots.values().stream()
        .filter(rows -> pedals(rows) == 1)
        .map(rows -> problem(rows.get(0)))
        .toList();
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
