package stackside.check;

import static stackside.check.Rule.error;
import static stackside.check.Rule.warning;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import stackside.derive.Analysis;
import stackside.derive.guidance.SparkQuestion;
import stackside.derive.voltage.VoltageCheck;
import stackside.model.ByLevel;
import stackside.model.Fact;
import stackside.model.Level;
import stackside.model.LevelScale;
import stackside.model.Mode;
import stackside.model.PedalSetting;
import stackside.quantity.PeakVolts;
import stackside.source.Location;

/** Peak voltage against ratings, sparks and levels. */
final class VoltageRules {

  private static final int FEWEST_LEVELS = 3;

  /** Ten times, less what rounding may take away. */
  private static final double FAR = 8;

  private VoltageRules() {}

  static List<Rule<CheckedUnit>> rules() {
    return List.of(
        error(
            "voltage-above-rating",
            "a mode puts more peak voltage on a part than it is rated for",
            VoltageRules::voltageAboveRating),
        error(
            "peak-voltage-missing",
            "a mode in use has no peak voltage at its level",
            VoltageRules::peakVoltageMissing),
        warning(
            "voltage-falls-with-level",
            "a higher level has a lower peak voltage",
            VoltageRules::voltageFallsWithLevel),
        warning(
            "voltage-ten-times-others",
            "one level's peak voltage is about ten times, or a tenth of, the others",
            VoltageRules::voltageTenTimesOthers),
        warning(
            "soft-mode-can-spark",
            "a soft mode has a peak voltage that can spark",
            VoltageRules::softModeCanSpark),
        warning(
            "cut-cannot-spark",
            "a cutting mode has a peak voltage too low to cut",
            VoltageRules::cutCannotSpark));
  }

  /**
   * Peak volts on both sides, never peak to peak. Source: GOST R IEC 60601-2-2-2022, 201.7.9.2.14
   * b), read.
   *
   * <p>Where several parts are too weak for one voltage, the voltage is the one thing to look at;
   * where one part is too weak for several, its rating.
   */
  private static List<Finding> voltageAboveRating(CheckedUnit checked) {
    List<VoltageCheck> exceeded =
        checked.analysis().voltages().stream()
            .filter(VoltageCheck::exceeded)
            .filter(it -> it.profile().settings().orElseThrow().belongTogether())
            .toList();
    List<Finding> found = new ArrayList<>();
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

  /** Whether the parts concerned withstand every other voltage that is put on them. */
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

  private static Finding ofVoltage(List<VoltageCheck> same) {
    VoltageCheck first = same.get(0);
    VoltageCheck weakest =
        same.stream().min(Comparator.comparing(it -> it.weakest().rated().value())).orElseThrow();
    return Finding.at(
            first.peak().at(),
            "%s reaches %s, but %s parts are rated for less, the weakest %s for %s"
                .formatted(
                    mode(first),
                    first.peak().value(),
                    distinct(same, it -> it.weakest().part().id()),
                    Wording.quoted(weakest.weakest().part()),
                    weakest.weakest().rated().value()))
        .note(weakest.weakest().rated().at(), "that rating")
        .note(first.pedal().mode().at(), "a profile that uses the mode")
        .help(
            "compare with the manufacturer's instructions; check whether it is peak or peak to peak");
  }

  private static Finding ofRating(List<VoltageCheck> same) {
    VoltageCheck first = same.get(0);
    Fact<PeakVolts> rated = first.weakest().rated();
    PeakVolts highest =
        same.stream().map(it -> it.peak().value()).max(Comparator.naturalOrder()).orElseThrow();
    return Finding.at(
            rated.at(),
            "%s is rated for %s, but %s settings in profiles go higher, up to %s"
                .formatted(
                    Wording.quoted(first.weakest().part()),
                    rated.value(),
                    distinct(same, VoltageCheck::peak),
                    highest))
        .note(
            first.pedal().mode().at(),
            "the first is %s with %s".formatted(mode(first), first.peak().value()))
        .help("check what is printed on the part, then correct its rating or the profiles");
  }

  private static Finding ofSetting(VoltageCheck check) {
    Fact<PeakVolts> rated = check.weakest().rated();
    Location at = check.pedal().level().map(Fact::at).orElse(check.pedal().mode().at());
    return Finding.at(
            at,
            "%s reaches %s, but %s is rated for %s"
                .formatted(
                    mode(check),
                    check.peak().value(),
                    Wording.quoted(check.weakest().part()),
                    rated.value()))
        .note(check.peak().at(), "where the machine's description says so")
        .note(rated.at(), "the rating")
        .help("name another level, mode, instrument or cable, or correct what is mistyped");
  }

  private static String mode(VoltageCheck check) {
    Mode mode = check.pedal().mode().value();
    return Wording.quoted(mode)
        + check.pedal().level().map(it -> " at " + Wording.level(mode, it.value())).orElse("");
  }

  private static List<Finding> peakVoltageMissing(CheckedUnit checked) {
    return checked.unit().profiles().stream()
        .flatMap(profile -> profile.pedalSettings().stream())
        .filter(setting -> levelMakesSense(setting) && isMissing(setting))
        .collect(
            Collectors.groupingBy(
                setting -> setting.mode().value().id(), LinkedHashMap::new, Collectors.toList()))
        .values()
        .stream()
        .map(VoltageRules::peakVoltageMissing)
        .toList();
  }

  private static boolean isMissing(PedalSetting setting) {
    return setting
        .mode()
        .value()
        .peakVoltage()
        .flatMap(volts -> volts.at(setting.level().map(Fact::value)))
        .isEmpty();
  }

  private static boolean levelMakesSense(PedalSetting setting) {
    return setting
        .mode()
        .value()
        .level()
        .map(scale -> setting.level().map(it -> scale.levels().contains(it.value())).orElse(false))
        .orElse(setting.level().isEmpty());
  }

  private static Finding peakVoltageMissing(List<PedalSetting> same) {
    Mode mode = same.get(0).mode().value();
    List<String> levels =
        same.stream()
            .flatMap(it -> it.level().stream())
            .map(it -> Wording.level(mode, it.value()))
            .toList();
    return Finding.at(
            mode.peakVoltage().map(ByLevel::at).orElse(mode.name().at()),
            "no peak voltage is given for %s%s, so it cannot be compared with any rating"
                .formatted(
                    Wording.quoted(mode), levels.isEmpty() ? "" : " at " + Wording.list(levels)))
        .note(same.get(0).mode().at(), "a profile that uses it")
        .help("add it from the manufacturer's instructions");
  }

  private static List<Finding> voltageFallsWithLevel(CheckedUnit checked) {
    return checked.unit().modes().stream()
        .filter(
            mode ->
                !sparksDoubted(checked.analysis(), mode)
                    && !ratingExceeded(checked.analysis(), mode)
                    && tenTimes(mode).isEmpty())
        .flatMap(mode -> voltageFallsWithLevel(mode).stream())
        .toList();
  }

  private static List<Finding> voltageTenTimesOthers(CheckedUnit checked) {
    return checked.unit().modes().stream()
        .filter(
            mode ->
                !sparksDoubted(checked.analysis(), mode)
                    && !ratingExceeded(checked.analysis(), mode))
        .flatMap(mode -> tenTimes(mode).map(level -> voltageTenTimesOthers(mode, level)).stream())
        .toList();
  }

  /** The level whose peak voltage lies far from that of all other levels. */
  private static Optional<Level> tenTimes(Mode mode) {
    List<Level> levels =
        mode.level().map(LevelScale::levels).orElse(List.of()).stream()
            .filter(level -> volts(mode, level).isPresent())
            .toList();
    return levels.size() < FEWEST_LEVELS
        ? Optional.empty()
        : levels.stream().filter(level -> isFarOff(mode, level, levels)).findFirst();
  }

  private static boolean isFarOff(Mode mode, Level level, List<Level> levels) {
    double value = peak(mode, level);
    List<Double> others =
        levels.stream().filter(it -> !it.equals(level)).map(it -> peak(mode, it)).toList();
    return others.stream().allMatch(it -> value >= FAR * it)
        || others.stream().allMatch(it -> FAR * value <= it);
  }

  private static double peak(Mode mode, Level level) {
    return volts(mode, level).orElseThrow().value().value();
  }

  private static Finding voltageTenTimesOthers(Mode mode, Level level) {
    Level other =
        mode.level().map(LevelScale::levels).orElse(List.of()).stream()
            .filter(it -> !it.equals(level) && volts(mode, it).isPresent())
            .findFirst()
            .orElseThrow();
    Fact<PeakVolts> at = volts(mode, level).orElseThrow();
    return Finding.at(
            at.at(),
            "%s at %s has %s, far from every other level: %s has %s"
                .formatted(
                    Wording.quoted(mode),
                    Wording.level(mode, level),
                    at.value(),
                    Wording.level(mode, other),
                    volts(mode, other).orElseThrow().value()))
        .note(volts(mode, other).orElseThrow().at(), "another level")
        .help(
            "compare it with the manufacturer's instructions; there may be a digit too many or too few");
  }

  private static Optional<Finding> voltageFallsWithLevel(Mode mode) {
    List<Level> levels =
        mode.level().map(LevelScale::levels).orElse(List.of()).stream()
            .filter(level -> volts(mode, level).isPresent())
            .toList();
    for (int i = 1; i < levels.size(); i++) {
      Fact<PeakVolts> lower = volts(mode, levels.get(i - 1)).orElseThrow();
      Fact<PeakVolts> upper = volts(mode, levels.get(i)).orElseThrow();
      if (upper.value().compareTo(lower.value()) < 0) {
        return Optional.of(voltageFallsWithLevel(mode, levels.get(i), lower, upper));
      }
    }
    return Optional.empty();
  }

  private static Optional<Fact<PeakVolts>> volts(Mode mode, Level level) {
    return mode.peakVoltage().flatMap(it -> it.at(Optional.of(level)));
  }

  private static Finding voltageFallsWithLevel(
      Mode mode, Level level, Fact<PeakVolts> lower, Fact<PeakVolts> upper) {
    return Finding.at(
            upper.at(),
            "%s at %s has %s, less than the %s at the level below"
                .formatted(
                    Wording.quoted(mode), Wording.level(mode, level), upper.value(), lower.value()))
        .note(lower.at(), "the level below")
        .help("compare both with the manufacturer's instructions; two values may be swapped");
  }

  private static List<Finding> softModeCanSpark(CheckedUnit checked) {
    return checked.analysis().questions().sparks(SparkQuestion.Doubt.SOFT_MODE_CAN_SPARK).stream()
        .filter(question -> !ratingExceeded(checked.analysis(), question.mode()))
        .map(VoltageRules::softModeCanSpark)
        .toList();
  }

  private static Finding softModeCanSpark(SparkQuestion question) {
    return Finding.at(
            question.peak().at(),
            "%s is a soft mode, but from about %s it can spark: it is described with %s"
                .formatted(
                    Wording.quoted(question.mode()),
                    SparkQuestion.SPARKS_FROM,
                    question.peak().value()))
        .note(question.mode().current().at(), "its kind of current")
        .help("check whether this is peak or peak to peak, and which kind of current it is");
  }

  private static List<Finding> cutCannotSpark(CheckedUnit checked) {
    return checked.analysis().questions().sparks(SparkQuestion.Doubt.CUT_CANNOT_SPARK).stream()
        .map(VoltageRules::cutCannotSpark)
        .toList();
  }

  private static Finding cutCannotSpark(SparkQuestion question) {
    return Finding.at(
            question.peak().at(),
            "%s is a cutting mode, but below about %s it cannot cut: it is described with %s"
                .formatted(
                    Wording.quoted(question.mode()),
                    SparkQuestion.SPARKS_FROM,
                    question.peak().value()))
        .note(question.mode().current().at(), "its kind of current")
        .help("check whether this is a peak voltage, and which kind of current it is");
  }

  /** Whether, by its description, a soft mode can spark or a cut cannot. */
  private static boolean sparksDoubted(Analysis analysis, Mode mode) {
    return analysis.questions().sparks().stream()
        .anyMatch(question -> question.mode().id().equals(mode.id()));
  }

  /** Whether the mode, at a level in use, puts more voltage on a part than it is rated for. */
  private static boolean ratingExceeded(Analysis analysis, Mode mode) {
    return analysis.voltages().stream()
        .filter(VoltageCheck::exceeded)
        .anyMatch(check -> check.pedal().mode().value().id().equals(mode.id()));
  }
}
