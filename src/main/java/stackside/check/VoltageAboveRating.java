package stackside.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.function.Function;
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

  /**
   * Where several parts are too weak for one voltage, the voltage is the one thing to look at;
   * where one part is too weak for several, its rating.
   */
  @Override
  public List<Problem> problems(Analysis analysis) {
    List<VoltageCheck> exceeded =
        analysis.voltages().stream()
            .filter(VoltageCheck::exceeded)
            .filter(it -> it.profile().settings().orElseThrow().belongTogether())
            .toList();
    List<Problem> found = new ArrayList<>();
    List<VoltageCheck> rest = new ArrayList<>();
    for (List<VoltageCheck> same : grouped(exceeded, VoltageCheck::peak)) {
      if (distinct(same, it -> it.weakest().part().id()) > 1 && isOnlyVoltage(same, exceeded)) {
        found.add(ofVoltage(same));
      } else {
        rest.addAll(same);
      }
    }
    for (List<VoltageCheck> same : grouped(rest, it -> it.weakest().part().id())) {
      found.add(distinct(same, VoltageCheck::peak) > 1 ? ofRating(same) : ofSetting(same.get(0)));
    }
    return found;
  }

  /** Whether the parts concerned stand every other voltage that is put on them. */
  private static boolean isOnlyVoltage(List<VoltageCheck> same, List<VoltageCheck> exceeded) {
    return exceeded.stream()
        .filter(
            it ->
                same.stream()
                    .anyMatch(one -> one.weakest().part().id().equals(it.weakest().part().id())))
        .allMatch(it -> it.peak().equals(same.get(0).peak()));
  }

  private static <K> Collection<List<VoltageCheck>> grouped(
      List<VoltageCheck> checks, Function<VoltageCheck, K> key) {
    return checks.stream()
        .collect(Collectors.groupingBy(key, LinkedHashMap::new, Collectors.toList()))
        .values();
  }

  private static long distinct(List<VoltageCheck> checks, Function<VoltageCheck, Object> key) {
    return checks.stream().map(key).distinct().count();
  }

  private static Problem ofVoltage(List<VoltageCheck> same) {
    VoltageCheck first = same.get(0);
    VoltageCheck weakest =
        same.stream().min(Comparator.comparing(it -> it.weakest().rated().value())).orElseThrow();
    return FAULT
        .at(
            first.peak().at(),
            "%s reaches %s, and %s parts are rated for less, the weakest %s for %s"
                .formatted(
                    mode(first),
                    first.peak().value(),
                    distinct(same, it -> it.weakest().part().id()),
                    Wording.quoted(weakest.weakest().part()),
                    weakest.weakest().rated().value()))
        .note(weakest.weakest().rated().at(), "where that rating stands")
        .note(first.pedal().mode().at(), "a profile that uses the mode")
        .help(
            "compare with the manufacturer's instructions; see whether it is peak or peak to peak");
  }

  private static Problem ofRating(List<VoltageCheck> same) {
    VoltageCheck first = same.get(0);
    Fact<PeakVolts> rated = first.weakest().rated();
    PeakVolts highest =
        same.stream().map(it -> it.peak().value()).max(Comparator.naturalOrder()).orElseThrow();
    return FAULT
        .at(
            rated.at(),
            "%s is rated for %s, and %s settings of profiles reach more, up to %s"
                .formatted(
                    Wording.quoted(first.weakest().part()),
                    rated.value(),
                    distinct(same, VoltageCheck::peak),
                    highest))
        .note(
            first.pedal().mode().at(),
            "the first is %s with %s".formatted(mode(first), first.peak().value()))
        .help("look at what is printed on the part, then correct its rating or the profiles");
  }

  private static Problem ofSetting(VoltageCheck check) {
    Fact<PeakVolts> rated = check.weakest().rated();
    Location at = check.pedal().level().map(Fact::at).orElse(check.pedal().mode().at());
    return FAULT
        .at(
            at,
            "%s reaches %s, and %s is rated for %s"
                .formatted(
                    mode(check),
                    check.peak().value(),
                    Wording.quoted(check.weakest().part()),
                    rated.value()))
        .note(check.peak().at(), "where the machine's description says so")
        .note(rated.at(), "where the rating stands")
        .help("name another level, mode, instrument or cable, or correct what is mistyped");
  }

  private static String mode(VoltageCheck check) {
    Mode mode = check.pedal().mode().value();
    return Wording.quoted(mode)
        + check.pedal().level().map(it -> " at " + Wording.level(mode, it.value())).orElse("");
  }
}
