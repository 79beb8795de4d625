package stackside.check;

import static stackside.check.Rule.error;
import static stackside.check.Rule.note;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import stackside.derive.Analysis;
import stackside.derive.guidance.OverMost;
import stackside.derive.guidance.SparkQuestion;
import stackside.derive.output.ModeOutput;
import stackside.derive.output.Outputs;
import stackside.model.CurrentType;
import stackside.model.Fact;
import stackside.model.Machine;
import stackside.model.Mode;
import stackside.model.OutputPoint;
import stackside.model.PedalSetting;
import stackside.model.PublishedOutput;
import stackside.model.Waveform;
import stackside.quantity.Watts;

/** Modes: their power, their pulse and what is published of their output. */
final class ModeRules {

  /** Published diagrams round, so a point may stand a little above its limit. */
  private static final double ROUNDING = 1.02;

  private ModeRules() {}

  static List<Rule<CheckedUnit>> rules() {
    return List.of(
        error(
            "mode-without-power",
            "a mode has neither a power limit nor a rated power",
            ModeRules::modeWithoutPower),
        error(
            "pulse-times-impossible",
            "a pulsed mode's times do not make a pulse",
            ModeRules::pulseTimesImpossible),
        error(
            "published-point-impossible",
            "a published point of output does not fit its mode",
            ModeRules::publishedPointImpossible),
        error(
            "waveform-mismatch",
            "the waveform of a mode does not fit its current",
            ModeRules::waveformMismatch),
        error(
            "power-over-four-hundred-watts",
            "a mode is described as going over 400 W",
            ModeRules::powerOverFourHundredWatts),
        note(
            "limit-never-reached",
            "a mode reaches its power limit at no published load",
            ModeRules::limitNeverReached));
  }

  private static List<Finding> modeWithoutPower(CheckedUnit checked) {
    return checked.unit().modes().stream()
        .filter(mode -> mode.powerLimit().isEmpty() && mode.ratedPower().isEmpty())
        .map(
            mode ->
                Finding.at(
                        mode.name().at(),
                        "neither a power limit nor a rated power is given for "
                            + Wording.quoted(mode))
                    .help("add 'power-limit' if watts can be set, otherwise 'rated-power'"))
        .toList();
  }

  private static List<Finding> pulseTimesImpossible(CheckedUnit checked) {
    return checked.unit().modes().stream()
        .flatMap(mode -> pulseTimesImpossible(mode).stream())
        .toList();
  }

  private static Optional<Finding> pulseTimesImpossible(Mode mode) {
    boolean pulsed = mode.waveform().value() == Waveform.PULSED;
    if (pulsed && mode.pulse().isEmpty()) {
      return Optional.of(
          Finding.at(
                  mode.waveform().at(),
                  "%s is pulsed, but no pulse times are given".formatted(Wording.quoted(mode)))
              .help("add 'pulse' from the manufacturer's instructions, or correct the waveform"));
    }
    if (!pulsed && mode.pulse().isPresent()) {
      return Optional.of(
          Finding.at(
                  mode.waveform().at(),
                  "%s is %s, but pulse times are given"
                      .formatted(Wording.quoted(mode), mode.waveform().value().word()))
              .note(mode.pulse().orElseThrow().at(), "the times")
              .help("correct the waveform, or remove the times"));
    }
    return mode.pulse()
        .filter(pulse -> !pulse.isPulse())
        .map(
            pulse ->
                Finding.at(
                        pulse.on().at(),
                        "%s cannot be on for %s in every %s"
                            .formatted(
                                Wording.quoted(mode), pulse.on().value(), pulse.every().value()))
                    .help("compare with the manufacturer's instructions; check s and ms"));
  }

  private static List<Finding> publishedPointImpossible(CheckedUnit checked) {
    List<Finding> found = new ArrayList<>();
    for (Machine machine : checked.unit().machines()) {
      for (Mode mode : machine.modes()) {
        mode.published().stream()
            .flatMap(
                published -> publishedPointImpossible(machine, mode, published).stream().limit(1))
            .forEach(found::add);
      }
    }
    return found;
  }

  private static List<Finding> publishedPointImpossible(
      Machine machine, Mode mode, PublishedOutput published) {
    List<Finding> found = new ArrayList<>();
    Optional<Fact<OutputPoint>> before = Optional.empty();
    for (Fact<OutputPoint> point : published.points()) {
      wrongWith(machine, published, before, point.value())
          .map(words -> Finding.at(point.at(), Wording.quoted(mode) + ": " + words))
          .map(
              finding ->
                  outsideLoadRange(machine, point.value())
                      ? finding.note(machine.loadRange().at(), "the load range")
                      : finding)
          .map(finding -> finding.help("compare with the manufacturer's diagram"))
          .ifPresent(found::add);
      before = Optional.of(point);
    }
    return found;
  }

  private static Optional<String> wrongWith(
      Machine machine,
      PublishedOutput published,
      Optional<Fact<OutputPoint>> before,
      OutputPoint point) {
    if (outsideLoadRange(machine, point)) {
      return Optional.of(
          "a point at %s is outside the machine's load range, %s"
              .formatted(point.load(), machine.loadRange().value().text()));
    }
    if (before.isPresent() && point.load().compareTo(before.orElseThrow().value().load()) <= 0) {
      return Optional.of(
          "the point at %s comes after the one at %s, but loads must rise"
              .formatted(point.load(), before.orElseThrow().value().load()));
    }
    return published
        .limit()
        .map(Fact::value)
        .filter(limit -> point.power().value() > limit.value() * ROUNDING)
        .map(
            limit ->
                "%s at %s is more than the limit, %s"
                    .formatted(point.power(), point.load(), limit));
  }

  private static boolean outsideLoadRange(Machine machine, OutputPoint point) {
    return !machine.loadRange().value().holds(point.load());
  }

  /** Which waveform belongs to which kind of current is common practice; no source. */
  private static List<Finding> waveformMismatch(CheckedUnit checked) {
    return checked.unit().modes().stream()
        .flatMap(mode -> waveformMismatch(mode).stream())
        .toList();
  }

  private static Optional<Finding> waveformMismatch(Mode mode) {
    Waveform waveform = mode.waveform().value();
    CurrentType current = mode.current().value();
    if (fits(current, waveform)) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.at(
                mode.waveform().at(),
                "%s is %s, but its waveform is given as %s"
                    .formatted(Wording.quoted(mode), current.spoken(), waveform.spoken()))
            .note(mode.current().at(), "the kind of current")
            .help("correct the waveform, or the kind of current"));
  }

  private static boolean fits(CurrentType current, Waveform waveform) {
    return switch (current) {
      case PULSED_CUT -> waveform == Waveform.PULSED;
      case CUT, SOFT_COAGULATION -> waveform == Waveform.CONTINUOUS;
      case BLENDED_CUT -> waveform != Waveform.CONTINUOUS;
      case FORCED_COAGULATION, SPRAY_COAGULATION -> waveform == Waveform.MODULATED;
      case ARGON_PLASMA_COAGULATION -> waveform != Waveform.CONTINUOUS;
    };
  }

  /** From memory: IEC 60601-2-2, 201.12.4.4.101. */
  private static List<Finding> powerOverFourHundredWatts(CheckedUnit checked) {
    return checked.analysis().questions().overMost().stream()
        .map(
            over ->
                Finding.at(
                        over.power().at(),
                        "%s would give %s, but no such machine may give more than %s"
                            .formatted(
                                Wording.quoted(over.mode()), over.power().value(), OverMost.MOST))
                    .help(
                        "compare with the manufacturer's instructions; there may be a digit too many"))
        .toList();
  }

  private static List<Finding> limitNeverReached(CheckedUnit checked) {
    return checked.analysis().outputs().inUse().stream()
        .filter(inUse -> inUse.output().map(ModeOutput::neverReachesLimit).orElse(false))
        .filter(
            inUse ->
                pedal(inUse).canBeSet() && !doubted(checked.analysis(), inUse.setting().mode()))
        .collect(
            Collectors.groupingBy(
                inUse -> inUse.setting().mode().id(), LinkedHashMap::new, Collectors.toList()))
        .values()
        .stream()
        .map(ModeRules::limitNeverReached)
        .toList();
  }

  private static PedalSetting pedal(Outputs.InUse inUse) {
    return inUse.asked().get(0).pedal();
  }

  /** A cut that could not cut has a wrong voltage, and another rule asks about that. */
  private static boolean doubted(Analysis analysis, Mode mode) {
    return analysis.questions().sparks().stream()
        .filter(question -> question.doubt() == SparkQuestion.Doubt.CUT_CANNOT_SPARK)
        .anyMatch(question -> question.mode().id().equals(mode.id()));
  }

  private static Finding limitNeverReached(List<Outputs.InUse> same) {
    Outputs.InUse first = same.get(0);
    Mode mode = first.setting().mode();
    Fact<Watts> limit = pedal(first).limit().orElseThrow();
    String others = same.size() == 1 ? "" : ", nor " + (same.size() - 1) + " more of its limits";
    return Finding.at(
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
        .help(
            "if voltage or current is mistyped there, correct it; otherwise nothing needs to change");
  }
}
