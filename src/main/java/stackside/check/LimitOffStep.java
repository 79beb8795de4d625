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

/** Finds power limits between two steps of their mode's control. */
final class LimitOffStep implements Rule {
  private static final Fault FAULT =
      new Fault(
          "limit-off-step", Severity.ERROR, "a power limit lies between two steps of the control");

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
                    .filter(range -> range.value().holds(limit.value()))
                    .filter(range -> !range.value().onStep(limit.value()))
                    .map(range -> misfit(mode, limit, range)));
  }

  private static MisfitSettings.Misfit misfit(
      Mode mode, Fact<Watts> limit, Fact<PowerRange> range) {
    String steps = "in steps of " + range.value().step();
    Problem problem =
        FAULT
            .at(
                limit.at(),
                "limit %s cannot be dialled: %s moves %s"
                    .formatted(limit.value(), Wording.quoted(mode), steps))
            .note(range.at(), "the machine's description says " + range.value().text())
            .help("correct the limit, or the machine's description if that is wrong");
    return new MisfitSettings.Misfit(
        mode, problem, range.at(), Wording.quoted(mode) + " does not move " + steps);
  }
}
