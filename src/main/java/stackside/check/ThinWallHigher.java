package stackside.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import stackside.derive.Analysis;
import stackside.derive.guidance.WallQuestion;
import stackside.derive.voltage.VoltageCheck;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Asks about settings that are higher where the unit itself calls the wall thinner. Source: Verma
 * and Chilton, Frontline Gastroenterology 2019;10:120, read; that segments differ in thickness is
 * disputed, so the unit's own wall classes are asked.
 */
final class ThinWallHigher implements Question {
  private static final Fault FAULT =
      new Fault(
          "thin-wall-higher", Severity.WARNING, "a thinner wall has the higher setting of a mode");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.questions().walls().stream()
        .filter(it -> !it.thinner().answers(FAULT.id()) && !it.thicker().answers(FAULT.id()))
        .filter(it -> isClear(analysis, it))
        .collect(
            Collectors.toMap(
                it -> it.thinner().id(),
                ThinWallHigher::problem,
                (first, later) -> first,
                LinkedHashMap::new))
        .values()
        .stream()
        .toList();
  }

  /** A setting that cannot be, or two answers to one question, is a mistake of its own. */
  private static boolean isClear(Analysis analysis, WallQuestion question) {
    boolean doubled =
        analysis.coverage().ambiguous().stream()
            .map(cell -> cell.cover().preferred())
            .anyMatch(it -> it.contains(question.thinner()) && it.contains(question.thicker()));
    boolean tooMuch =
        analysis.voltages().stream()
            .filter(VoltageCheck::exceeded)
            .anyMatch(it -> it.pedal().equals(question.higher()));
    return question.higher().canBeSet() && question.lower().canBeSet() && !doubled && !tooMuch;
  }

  private static Problem problem(WallQuestion question) {
    return FAULT
        .at(
            question.higher().at(),
            "%s is set higher at %s, where the wall is %s, than at %s, where it is %s"
                .formatted(
                    Wording.quoted(question.higher().mode().value()),
                    Wording.quoted(question.thinnerSite()),
                    question.thinnerSite().wall().value().word(),
                    Wording.quoted(question.thickerSite()),
                    question.thickerSite().wall().value().word()))
        .note(question.lower().at(), "the lower setting")
        .help("see whether the two rows are swapped; if it is meant, say why under 'because'");
  }
}
