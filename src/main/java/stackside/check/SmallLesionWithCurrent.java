package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.derive.guidance.ColdSnareQuestion;
import stackside.model.Profile;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Asks about current for small non-pedunculated colorectal polyps. Sources: ESGE 2024, Endoscopy
 * 2024;56:516, recommendations 1 and 3, read; USMSTF 2020, read.
 */
final class SmallLesionWithCurrent implements Question {
  private static final Fault FAULT =
      new Fault(
          "small-lesion-with-current",
          Severity.WARNING,
          "current is approved where guidance recommends a cold snare for the size");

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
                question.recommendations().stream()
                    .anyMatch(it -> it != ColdSnareQuestion.Recommendation.SERRATED))
        .map(SmallLesionWithCurrent::problem)
        .toList();
  }

  private static Problem problem(ColdSnareQuestion question) {
    Profile profile = question.profile();
    return FAULT
        .at(
            profile.settings().orElseThrow().instrument().at(),
            "profile '%s' uses current for %s, and ESGE 2024 recommends a cold snare under 10 mm"
                .formatted(profile.id().slug(), Wording.quoted(question.lesion())))
        .note(question.lesion().at(), "the lesion")
        .help("see whether the lesion is right; if current is meant, say why under 'because'");
  }
}
