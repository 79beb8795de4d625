package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.derive.guidance.SparkQuestion;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Asks about soft coagulation whose peak voltage is high enough for a spark. */
final class SoftModeCanSpark implements Rule {
  private static final Fault FAULT =
      new Fault(
          "soft-mode-can-spark", Severity.WARNING, "a soft mode has a peak voltage that can spark");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.questions().sparks(SparkQuestion.Doubt.SOFT_MODE_CAN_SPARK).stream()
        .filter(question -> !Doubts.ofRatings(analysis, question.mode()))
        .map(SoftModeCanSpark::problem)
        .toList();
  }

  private static Problem problem(SparkQuestion question) {
    return FAULT
        .at(
            question.peak().at(),
            "%s is a soft mode, and from about %s it can spark: it is described with %s"
                .formatted(
                    Wording.quoted(question.mode()),
                    SparkQuestion.SPARKS_FROM,
                    question.peak().value()))
        .note(question.mode().current().at(), "where its kind of current stands")
        .help("see whether this is peak or peak to peak, and which kind of current it is");
  }
}
