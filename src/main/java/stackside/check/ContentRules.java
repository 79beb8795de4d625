package stackside.check;

import java.time.LocalDate;
import java.util.List;
import stackside.derive.Analysis;
import stackside.source.Problem;

/** The one list of all rules about content, subject by subject. */
public final class ContentRules {

  private static final Catalogue<CheckedUnit> CATALOGUE =
      Catalogue.of(
          LimitRules.rules(),
          PedalRules.rules(),
          ProgramRules.rules(),
          InstrumentRules.rules(),
          PlateRules.rules(),
          ArgonRules.rules(),
          KeptRules.rules(),
          SocketRules.rules(),
          ModeRules.rules(),
          MachineAnswerRules.rules(),
          VoltageRules.rules(),
          LesionRules.rules(),
          CoverageRules.rules(),
          AnswerRules.rules(),
          AssetRules.rules(),
          ContactRules.rules(),
          PolicyRules.rules(),
          CardWordRules.rules(),
          NameRules.rules(),
          RecordRules.rules(),
          FailureSignRules.rules(),
          DrillRules.rules(),
          AdviceRules.rules(),
          FigureRules.rules(),
          HandbookRules.rules());

  private ContentRules() {}

  /** Every rule about content. */
  public static Catalogue<CheckedUnit> catalogue() {
    return CATALOGUE;
  }

  /** The ids of the rules that a profile may answer under {@code because}. */
  public static List<String> questions() {
    return CATALOGUE.rules().stream()
        .filter(Rule::answerable)
        .map(rule -> rule.fault().id())
        .sorted()
        .toList();
  }

  /**
   * Checks a unit, and leaves out what only follows from a mistake of reading.
   *
   * @param reading what reading found
   */
  public static List<Problem> judge(Analysis analysis, LocalDate day, List<Problem> reading) {
    return judge(analysis, day).stream()
        .filter(found -> reading.stream().noneMatch(error -> explains(error, found)))
        .toList();
  }

  /** A thing that an unknown reference may mean does not count as unused. */
  private static boolean explains(Problem error, Problem found) {
    return found.fault().id().equals("never-used")
        && error.notes().stream().anyMatch(note -> note.at().equals(found.at()));
  }

  /**
   * Checks a unit.
   *
   * @param day the day as of which it is checked
   * @return what is wrong, sorted by place, each problem once
   */
  public static List<Problem> judge(Analysis analysis, LocalDate day) {
    return CATALOGUE.problems(new CheckedUnit(analysis, day)).distinct().sorted().toList();
  }
}
