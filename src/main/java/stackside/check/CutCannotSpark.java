package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.derive.guidance.SparkQuestion;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Asks about cutting modes whose peak voltage is too low for the spark that cuts. */
final class CutCannotSpark implements Rule {
  private static final Fault FAULT =
      new Fault(
          "cut-cannot-spark", Severity.WARNING, "a cutting mode has a peak voltage too low to cut");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.questions().sparks(SparkQuestion.Doubt.CUT_CANNOT_SPARK).stream()
        .map(CutCannotSpark::problem)
        .toList();
  }

  private static Problem problem(SparkQuestion question) {
    return FAULT
        .at(
            question.peak().at(),
            "%s is a cutting mode, and below about %s it cannot cut: it is described with %s"
                .formatted(
                    Wording.quoted(question.mode()),
                    SparkQuestion.SPARKS_FROM,
                    question.peak().value()))
        .note(question.mode().current().at(), "where its kind of current stands")
        .help("see whether this is a peak voltage, and which kind of current it is");
  }
}
