package stackside.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import stackside.derive.Analysis;
import stackside.derive.guidance.SparkQuestion;
import stackside.derive.output.ModeOutput;
import stackside.derive.output.Outputs;
import stackside.model.Fact;
import stackside.model.Mode;
import stackside.model.PedalSetting;
import stackside.quantity.Watts;
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
    return analysis.outputs().inUse().stream()
        .filter(inUse -> inUse.output().map(ModeOutput::neverReachesLimit).orElse(false))
        .filter(inUse -> pedal(inUse).canBeSet() && !doubted(analysis, inUse.setting().mode()))
        .collect(
            Collectors.groupingBy(
                inUse -> inUse.setting().mode().id(), LinkedHashMap::new, Collectors.toList()))
        .values()
        .stream()
        .map(LimitNeverReached::problem)
        .toList();
  }

  private static PedalSetting pedal(Outputs.InUse inUse) {
    return inUse.asked().get(0).pedal();
  }

  /** A cut that could not cut has its voltage wrong, which is asked about elsewhere. */
  private static boolean doubted(Analysis analysis, Mode mode) {
    return analysis.questions().sparks().stream()
        .filter(question -> question.doubt() == SparkQuestion.Doubt.CUT_CANNOT_SPARK)
        .anyMatch(question -> question.mode().id().equals(mode.id()));
  }

  private static Problem problem(List<Outputs.InUse> same) {
    Outputs.InUse first = same.get(0);
    Mode mode = first.setting().mode();
    Fact<Watts> limit = pedal(first).limit().orElseThrow();
    String others = same.size() == 1 ? "" : ", nor " + (same.size() - 1) + " more of its limits";
    return FAULT
        .at(
            limit.at(),
            "%s does not reach %s%s%s at any load from %s"
                .formatted(
                    Wording.quoted(mode),
                    limit.value(),
                    pedal(first)
                        .level()
                        .map(it -> " at " + Wording.level(mode, it.value()))
                        .orElse(""),
                    others,
                    first.machine().loadRange().value().text()))
        .note(mode.at(), "the machine's description of the mode")
        .help("if voltage or current is mistyped there, correct it; else nothing need change");
  }
}
