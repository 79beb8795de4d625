package stackside.check;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import stackside.derive.Analysis;
import stackside.derive.voltage.VoltageCheck;
import stackside.model.Fact;
import stackside.model.Mode;
import stackside.quantity.PeakVolts;
import stackside.source.Fault;
import stackside.source.Location;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Finds modes that put more peak voltage on a chain than its weakest part is rated for. Source:
 * GOST R IEC 60601-2-2-2022, 201.7.9.2.14 b), read. Peak volts on both sides, never peak to peak.
 */
final class VoltageAboveRating implements Rule {
  private static final Fault FAULT =
      new Fault(
          "voltage-above-rating",
          Severity.ERROR,
          "a mode puts more peak voltage on a part than it is rated for");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.voltages().stream()
        .filter(VoltageCheck::exceeded)
        .filter(it -> it.profile().settings().orElseThrow().belongTogether())
        .collect(
            Collectors.groupingBy(
                it -> it.weakest().part().id(), LinkedHashMap::new, Collectors.toList()))
        .values()
        .stream()
        .map(VoltageAboveRating::problem)
        .toList();
  }

  /** Where a part is too weak for several settings, its rating is the one thing to look at. */
  private static Problem problem(List<VoltageCheck> same) {
    VoltageCheck first = same.get(0);
    Fact<PeakVolts> rated = first.weakest().rated();
    String part = Wording.quoted(first.weakest().part());
    List<String> settings = same.stream().map(VoltageAboveRating::words).distinct().toList();
    if (settings.size() > 1) {
      return FAULT
          .at(
              rated.at(),
              "%s is rated for %s, and %s settings of profiles reach more, up to %s"
                  .formatted(part, rated.value(), settings.size(), highest(same)))
          .note(first.pedal().mode().at(), "the first is " + settings.get(0))
          .help("look at what is printed on the part, then correct its rating or the profiles");
    }
    Location at = first.pedal().level().map(Fact::at).orElse(first.pedal().mode().at());
    return FAULT
        .at(
            at,
            "%s reaches %s, and %s is rated for %s"
                .formatted(mode(first), first.peak().value(), part, rated.value()))
        .note(first.peak().at(), "where the machine's description says so")
        .note(rated.at(), "where the rating stands")
        .help("name another level, mode, instrument or cable, or correct what is mistyped");
  }

  private static PeakVolts highest(List<VoltageCheck> same) {
    return same.stream().map(it -> it.peak().value()).max(Comparator.naturalOrder()).orElseThrow();
  }

  private static String words(VoltageCheck check) {
    return mode(check) + " with " + check.peak().value();
  }

  private static String mode(VoltageCheck check) {
    Mode mode = check.pedal().mode().value();
    return Wording.quoted(mode)
        + check.pedal().level().map(it -> " at " + Wording.level(mode, it.value())).orElse("");
  }
}
