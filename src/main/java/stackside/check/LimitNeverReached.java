package stackside.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.derive.output.ModeOutput;
import stackside.derive.output.Outputs;
import stackside.model.Mode;
import stackside.model.PedalSetting;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Tells of power limits that a mode reaches at no load of the machine's published range. */
final class LimitNeverReached implements Rule {
  private static final Fault FAULT =
      new Fault(
          "limit-never-reached",
          Severity.NOTE,
          "a mode reaches its power limit at no published load");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    List<Problem> found = new ArrayList<>();
    for (Outputs.InUse inUse : analysis.outputs().inUse()) {
      inUse
          .output()
          .filter(ModeOutput::neverReachesLimit)
          .flatMap(output -> problem(inUse))
          .ifPresent(found::add);
    }
    return found;
  }

  private static Optional<Problem> problem(Outputs.InUse inUse) {
    PedalSetting pedal = inUse.asked().get(0).pedal();
    Mode mode = pedal.mode().value();
    return pedal
        .limit()
        .filter(limit -> pedal.canBeSet())
        .map(
            limit ->
                FAULT
                    .at(
                        limit.at(),
                        "%s does not reach %s at any load from %s%s"
                            .formatted(
                                Wording.quoted(mode),
                                limit.value(),
                                inUse.machine().loadRange().value().text(),
                                pedal
                                    .level()
                                    .map(
                                        it ->
                                            "; at "
                                                + Wording.level(mode, it.value())
                                                + " its voltage holds it back")
                                    .orElse("")))
                    .note(mode.at(), "the machine's description of the mode")
                    .help("nothing need change; the limit is not what decides here"));
  }
}
