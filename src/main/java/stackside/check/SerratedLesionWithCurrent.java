package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.derive.guidance.ColdSnareQuestion;
import stackside.model.Profile;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Asks about current for serrated colorectal lesions without dysplasia. Source: ESGE 2024,
 * Endoscopy 2024;56:516, recommendation 7, read.
 */
final class SerratedLesionWithCurrent implements Question {
  private static final Fault FAULT =
      new Fault(
          "serrated-lesion-with-current",
          Severity.WARNING,
          "current is approved where guidance recommends cold resection of serrated lesions");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.questions().coldSnare().stream()
        .filter(question -> !question.profile().answers(FAULT.id()))
        .filter(
            question ->
                question
                    .recommendations()
                    .equals(List.of(ColdSnareQuestion.Recommendation.SERRATED)))
        .map(SerratedLesionWithCurrent::problem)
        .toList();
  }

  private static Problem problem(ColdSnareQuestion question) {
    Profile profile = question.profile();
    return FAULT
        .at(
            profile.settings().orElseThrow().instrument().at(),
            "profile '%s' uses current for %s, and ESGE 2024 recommends cold resection, in pieces if large"
                .formatted(profile.id().slug(), Wording.quoted(question.lesion())))
        .note(question.lesion().at(), "the lesion")
        .help("see whether the lesion is right; if current is meant, say why under 'because'");
  }
}
