package stackside.derive.standing;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import stackside.model.Fact;
import stackside.model.LoggedRecord;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Finds days in the content that are still to come. What was read, measured, done or seen lies in
 * the past; a mistyped year would hide a record until that day.
 */
public final class DatedAhead {
  public static final Fault FAULT =
      new Fault(
          "dated-ahead",
          Severity.ERROR,
          "something that has happened carries a date that is still to come");

  private DatedAhead() {}

  public static List<Problem> problems(Unit unit, LocalDate today) {
    return days(unit)
        .filter(day -> day.value().isAfter(today))
        .map(
            day ->
                FAULT
                    .at(
                        day.at(),
                        "this happened on "
                            + day.value()
                            + ", which is still to come: today is "
                            + today)
                    .help("correct the date"))
        .toList();
  }

  private static Stream<Fact<LocalDate>> days(Unit unit) {
    Stream<Fact<LocalDate>> records =
        Stream.of(
                unit.programReadings(), unit.serviceEvents(), unit.outputChecks(), unit.withdrawn())
            .flatMap(List::stream)
            .map(LoggedRecord::date);
    Stream<Fact<LocalDate>> seen =
        unit.machines().stream()
            .flatMap(machine -> machine.answers().values().stream())
            .flatMap(response -> response.evidence().value().observation().stream())
            .map(observation -> observation.observed());
    Stream<Fact<LocalDate>> since = unit.assets().stream().map(asset -> asset.since());
    return Stream.of(records, seen, since).flatMap(days -> days);
  }
}
