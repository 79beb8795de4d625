package stackside.check;

import static stackside.check.Rule.error;
import static stackside.check.Rule.question;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.derive.guidance.ColdSnareQuestion;
import stackside.derive.guidance.PatientQuestion;
import stackside.derive.guidance.WallQuestion;
import stackside.derive.voltage.VoltageCheck;
import stackside.model.Fact;
import stackside.model.Kind;
import stackside.model.PedalSetting;
import stackside.model.Profile;
import stackside.model.ThingId;
import stackside.model.Unit;

/** The answers that profiles give, and what they rest on. */
final class AnswerRules {

  private AnswerRules() {}

  static List<Rule<CheckedUnit>> rules() {
    return List.of(
        question(
            "profile-serves-no-room",
            "a profile answers nothing that a room offers",
            AnswerRules::profileServesNoRoom),
        question(
            "not-approved-without-ask",
            "something is not approved, but nobody to ask is named",
            AnswerRules::notApprovedWithoutAsk),
        question(
            "evidence-missing",
            "settings are approved without evidence",
            AnswerRules::evidenceMissing),
        error(
            "answer-to-unknown-question",
            "an answer is given to a question that no rule asks",
            AnswerRules::answerToUnknownQuestion),
        question(
            "thin-wall-higher",
            "a thinner wall has the higher setting of a mode",
            AnswerRules::thinWallHigher),
        question(
            "lighter-patient-higher",
            "lighter patients have the higher setting of a mode",
            AnswerRules::lighterPatientHigher),
        question(
            "small-lesion-with-current",
            "current is approved where guidance recommends a cold snare for the size",
            AnswerRules::smallLesionWithCurrent),
        question(
            "serrated-lesion-with-current",
            "current is approved where guidance recommends cold resection of serrated lesions",
            AnswerRules::serratedLesionWithCurrent));
  }

  private static List<Finding> profileServesNoRoom(
      CheckedUnit checked, Predicate<Profile> unanswered) {
    Unit unit = checked.unit();
    if (!unit.broken().isEmpty()) {
      return List.of();
    }
    Set<ThingId> used =
        checked.analysis().coverage().cells().stream()
            .flatMap(
                cell ->
                    Stream.concat(
                        cell.cover().preferred().stream(), cell.cover().alternatives().stream()))
            .map(Profile::id)
            .collect(Collectors.toSet());
    return unit.profiles().stream()
        .filter(profile -> !used.contains(profile.id()) && unanswered.test(profile))
        .filter(profile -> !unit.roomsWith(profile.machine().value()).isEmpty())
        .map(AnswerRules::profileServesNoRoom)
        .toList();
  }

  private static Finding profileServesNoRoom(Profile profile) {
    return Finding.at(
            profile.at(),
            "profile '%s' answers nothing that a room with %s offers"
                .formatted(profile.id().slug(), Wording.quoted(profile.machine().value())))
        .help("correct its lesion, site, step or patients, or add it to what a room offers");
  }

  private static List<Finding> notApprovedWithoutAsk(
      CheckedUnit checked, Predicate<Profile> unanswered) {
    return checked.unit().profiles().stream()
        .filter(profile -> profile.ask().isEmpty() && unanswered.test(profile))
        .flatMap(profile -> profile.notApproved().stream())
        .map(
            words ->
                Finding.at(
                        words.at(),
                        "this is not approved here, but the profile names nobody to ask")
                    .help("add 'ask' with a role from unit.yaml, or say why not under 'because'"))
        .toList();
  }

  private static List<Finding> evidenceMissing(CheckedUnit checked, Predicate<Profile> unanswered) {
    if (checked.unit().anyBroken(Kind.CITATION)) {
      return List.of();
    }
    return checked.unit().profiles().stream()
        .filter(profile -> profile.evidence().isEmpty() && unanswered.test(profile))
        .filter(profile -> profile.settings().isPresent())
        .map(
            profile ->
                Finding.at(profile.at(), "profile '" + profile.id().slug() + "' names no evidence")
                    .help(
                        "add 'evidence' with an id from sources.yaml; the unit's own minutes will do"))
        .toList();
  }

  private static List<Finding> answerToUnknownQuestion(CheckedUnit checked) {
    List<String> asked = ContentRules.questions();
    List<Finding> found = new ArrayList<>();
    for (Profile profile : checked.unit().profiles()) {
      profile
          .because()
          .forEach(
              (id, answer) -> {
                if (!asked.contains(id)) {
                  found.add(answerToUnknownQuestion(id, answer, asked));
                }
              });
    }
    return found;
  }

  private static Finding answerToUnknownQuestion(
      String id, Fact<String> answer, List<String> asked) {
    return Finding.at(answer.at(), "no rule asks the question '" + id + "', which is answered here")
        .help(
            "use the id in brackets after the warning; profiles can answer " + Wording.list(asked));
  }

  /**
   * Asks about settings that are higher where the unit itself calls the wall thinner. Source: Verma
   * and Chilton, Frontline Gastroenterology 2019;10:120, read; that segments differ in thickness is
   * disputed, so the unit's own wall classes are asked.
   */
  private static List<Finding> thinWallHigher(CheckedUnit checked, Predicate<Profile> unanswered) {
    return checked.analysis().questions().walls().stream()
        .filter(it -> unanswered.test(it.thinner()) && unanswered.test(it.thicker()))
        .filter(
            it -> isClear(checked.analysis(), it.thinner(), it.higher(), it.thicker(), it.lower()))
        .collect(
            Collectors.toMap(
                it -> it.thinner().id(),
                AnswerRules::thinWallHigher,
                (first, later) -> first,
                LinkedHashMap::new))
        .values()
        .stream()
        .toList();
  }

  /**
   * Leaves out settings that cannot be made and questions with two answers: other rules report
   * those.
   */
  private static boolean isClear(
      Analysis analysis, Profile one, PedalSetting higher, Profile other, PedalSetting lower) {
    boolean doubled =
        analysis.coverage().ambiguous().stream()
            .map(cell -> cell.cover().preferred())
            .anyMatch(it -> it.contains(one) && it.contains(other));
    boolean tooMuch =
        analysis.voltages().stream()
            .filter(VoltageCheck::exceeded)
            .anyMatch(it -> it.pedal().equals(higher));
    return higher.canBeSet() && lower.canBeSet() && !doubled && !tooMuch;
  }

  private static Finding thinWallHigher(WallQuestion question) {
    return Finding.at(
            question.higher().at(),
            "%s is set higher at %s, where the wall is %s, than at %s, where it is %s"
                .formatted(
                    Wording.quoted(question.higher().mode().value()),
                    Wording.quoted(question.thinnerSite()),
                    question.thinnerSite().wall().value().word(),
                    Wording.quoted(question.thickerSite()),
                    question.thickerSite().wall().value().word()))
        .note(question.lower().at(), "the lower setting")
        .help(
            "check whether the two rows are swapped; if this is intended, say why under 'because'");
  }

  private static List<Finding> lighterPatientHigher(
      CheckedUnit checked, Predicate<Profile> unanswered) {
    return checked.analysis().questions().patients().stream()
        .filter(it -> unanswered.test(it.lighter()) && unanswered.test(it.heavier()))
        .filter(
            it -> isClear(checked.analysis(), it.lighter(), it.higher(), it.heavier(), it.lower()))
        .collect(
            Collectors.toMap(
                it -> it.lighter().id(),
                AnswerRules::lighterPatientHigher,
                (first, later) -> first,
                LinkedHashMap::new))
        .values()
        .stream()
        .toList();
  }

  private static Finding lighterPatientHigher(PatientQuestion question) {
    return Finding.at(
            question.higher().at(),
            "%s is set higher for %s than for %s, who are heavier"
                .formatted(
                    Wording.quoted(question.higher().mode().value()),
                    Wording.quoted(question.light()),
                    Wording.quoted(question.heavy())))
        .note(question.lower().at(), "the lower setting")
        .help(
            "check whether the two rows are swapped; if this is intended, say why under 'because'");
  }

  /**
   * Sources: ESGE 2024, Endoscopy 2024;56:516, recommendations 1 and 3, read; USMSTF 2020, read.
   */
  private static List<Finding> smallLesionWithCurrent(
      CheckedUnit checked, Predicate<Profile> unanswered) {
    return coldSnare(
        checked,
        unanswered,
        each -> each.stream().anyMatch(it -> it != ColdSnareQuestion.Recommendation.SERRATED),
        "a cold snare under 10 mm");
  }

  /** Source: ESGE 2024, Endoscopy 2024;56:516, recommendation 7, read. */
  private static List<Finding> serratedLesionWithCurrent(
      CheckedUnit checked, Predicate<Profile> unanswered) {
    return coldSnare(
        checked,
        unanswered,
        List.of(ColdSnareQuestion.Recommendation.SERRATED)::equals,
        "cold resection, in pieces if large");
  }

  private static List<Finding> coldSnare(
      CheckedUnit checked,
      Predicate<Profile> unanswered,
      Predicate<List<ColdSnareQuestion.Recommendation>> which,
      String recommended) {
    return checked.analysis().questions().coldSnare().stream()
        .filter(question -> unanswered.test(question.profile()))
        .filter(question -> which.test(question.recommendations()))
        .map(
            question ->
                Finding.at(
                        question.profile().settings().orElseThrow().instrument().at(),
                        "profile '%s' uses current for %s, but ESGE 2024 recommends %s"
                            .formatted(
                                question.profile().id().slug(),
                                Wording.quoted(question.lesion()),
                                recommended))
                    .note(question.lesion().at(), "the lesion")
                    .help("check the lesion; if current is intended, say why under 'because'"))
        .toList();
  }
}
