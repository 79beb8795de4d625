package stackside.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.model.Fact;
import stackside.model.Mode;
import stackside.model.PedalSetting;
import stackside.quantity.PowerRange;
import stackside.quantity.Watts;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds power limits below or above what their mode can be set to. */
final class LimitOutsideRange implements Rule {
  private static final Fault FAULT =
      new Fault(
          "limit-outside-range",
          Severity.ERROR,
          "a power limit is lower or higher than the mode can be set to");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return MisfitSettings.problems(analysis.unit(), FAULT, setting -> Stream.of(misfit(setting)));
  }

  private static Optional<MisfitSettings.Misfit> misfit(PedalSetting setting) {
    Mode mode = setting.mode().value();
    return setting
        .limit()
        .flatMap(
            limit ->
                mode.powerLimit()
                    .filter(range -> !range.value().holds(limit.value()))
                    .map(range -> misfit(mode, limit, range)));
  }

  private static MisfitSettings.Misfit misfit(
      Mode mode, Fact<Watts> limit, Fact<PowerRange> range) {
    Watts lowest = range.value().from();
    Watts highest = range.value().to();
    String beyond =
        limit.value().compareTo(highest) > 0
            ? "above the highest that %s can be set to, " + highest
            : "below the lowest that %s can be set to, " + lowest;
    Problem problem =
        FAULT
            .at(
                limit.at(),
                "limit " + limit.value() + " is " + beyond.formatted(Wording.quoted(mode)))
            .note(range.at(), "the machine's description says " + range.value().text())
            .help("correct the limit, or the machine's description if that is wrong");
    return new MisfitSettings.Misfit(
        mode,
        problem,
        range.at(),
        Wording.quoted(mode) + " is set outside " + lowest + " to " + highest);
  }
}
