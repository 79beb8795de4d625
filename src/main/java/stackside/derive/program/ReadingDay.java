package stackside.derive.program;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stackside.model.ProgramReading;
import stackside.model.Unit;

/**
 * What was read on one generator on one day.
 *
 * @param slots the rows of each slot, in the order of the record
 */
public record ReadingDay(List<List<ProgramReading>> slots) {

  public ReadingDay {
    slots = slots.stream().map(List::copyOf).toList();
  }

  /** All reading days of all generators, in the order of the record. */
  public static List<ReadingDay> of(Unit unit) {
    return unit.programReadings().stream()
        .collect(
            Collectors.groupingBy(
                row -> List.of(row.asset().value().id(), row.date().value()),
                LinkedHashMap::new,
                Collectors.toList()))
        .values()
        .stream()
        .map(ReadingDay::of)
        .toList();
  }

  private static ReadingDay of(List<ProgramReading> rows) {
    Map<Integer, List<ProgramReading>> slots =
        rows.stream()
            .collect(
                Collectors.groupingBy(
                    row -> row.slot().value(), LinkedHashMap::new, Collectors.toList()));
    return new ReadingDay(List.copyOf(slots.values()));
  }
}
