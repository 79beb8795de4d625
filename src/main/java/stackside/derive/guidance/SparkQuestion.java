package stackside.derive.guidance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.model.ByLevel;
import stackside.model.Fact;
import stackside.model.Level;
import stackside.model.Machine;
import stackside.model.Mode;
import stackside.model.Unit;
import stackside.quantity.PeakVolts;

/**
 * A soft coagulation that could spark, or a cut that could not. Sparks need about 200 V peak (Farin
 * and Grund; ASGE 2013; from memory).
 *
 * @param level absent if one peak voltage applies to the whole mode
 */
public record SparkQuestion(
    Machine machine, Mode mode, Optional<Level> level, Fact<PeakVolts> peak, Doubt doubt) {

  /** The approximate peak voltage above which sparks jump to tissue. */
  public static final PeakVolts SPARKS_FROM = new PeakVolts(200);

  /** What is doubtful. */
  public enum Doubt {
    SOFT_MODE_CAN_SPARK,
    CUT_CANNOT_SPARK
  }

  /** All such modes and levels of a unit. */
  public static List<SparkQuestion> of(Unit unit) {
    List<SparkQuestion> questions = new ArrayList<>();
    for (Machine machine : unit.machines()) {
      for (Mode mode : machine.modes()) {
        mode.peakVoltage().ifPresent(peaks -> ask(machine, mode, peaks, questions));
      }
    }
    return questions;
  }

  private static void ask(
      Machine machine, Mode mode, ByLevel<PeakVolts> peaks, List<SparkQuestion> questions) {
    peaks.all().ifPresent(peak -> ask(machine, mode, Optional.empty(), peak, questions));
    peaks.each().forEach((level, peak) -> ask(machine, mode, Optional.of(level), peak, questions));
  }

  private static void ask(
      Machine machine,
      Mode mode,
      Optional<Level> level,
      Fact<PeakVolts> peak,
      List<SparkQuestion> questions) {
    doubt(mode, peak.value())
        .ifPresent(doubt -> questions.add(new SparkQuestion(machine, mode, level, peak, doubt)));
  }

  private static Optional<Doubt> doubt(Mode mode, PeakVolts peak) {
    boolean sparks = peak.compareTo(SPARKS_FROM) >= 0;
    return switch (mode.current().value()) {
      case SOFT_COAGULATION -> sparks ? Optional.of(Doubt.SOFT_MODE_CAN_SPARK) : Optional.empty();
      case CUT, BLENDED_CUT, PULSED_CUT ->
          sparks ? Optional.empty() : Optional.of(Doubt.CUT_CANNOT_SPARK);
      case FORCED_COAGULATION, SPRAY_COAGULATION, ARGON_PLASMA_COAGULATION -> Optional.empty();
    };
  }
}
