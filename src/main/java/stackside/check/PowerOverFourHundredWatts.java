package stackside.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.model.Fact;
import stackside.model.Mode;
import stackside.quantity.Watts;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds modes described as going over 400 W. From memory: IEC 60601-2-2, 201.12.4.4.101. */
final class PowerOverFourHundredWatts implements Rule {
  private static final Fault FAULT =
      new Fault(
          "power-over-four-hundred-watts",
          Severity.ERROR,
          "a mode is described as going over 400 W");

  private static final Watts MOST = new Watts(400);

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().machines().stream()
        .flatMap(machine -> machine.modes().stream())
        .flatMap(mode -> problem(mode).stream())
        .toList();
  }

  private static Optional<Problem> problem(Mode mode) {
    Stream<Fact<Watts>> limit =
        mode.powerLimit().stream().map(it -> new Fact<>(it.value().to(), it.at()));
    Stream<Fact<Watts>> rated =
        mode.ratedPower().stream()
            .flatMap(it -> Stream.concat(it.all().stream(), it.each().values().stream()));
    return Stream.concat(limit, rated)
        .filter(power -> power.value().compareTo(MOST) > 0)
        .findFirst()
        .map(
            power ->
                FAULT
                    .at(
                        power.at(),
                        "%s would give %s, and no such machine may give more than %s"
                            .formatted(Wording.quoted(mode), power.value(), MOST))
                    .help("compare with the manufacturer's instructions; a digit may be too many"));
  }
}
