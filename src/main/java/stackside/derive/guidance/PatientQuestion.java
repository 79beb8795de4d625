package stackside.derive.guidance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.model.PatientGroup;
import stackside.model.PedalSetting;
import stackside.model.Profile;
import stackside.model.Unit;

/**
 * The same mode set higher for lighter patients: same machine, lesion, step, pedal and a site that
 * both answers name. It compares the unit's own answers and no published numbers.
 *
 * @param lighter the answer for lighter patients, which is higher
 * @param heavier the answer for heavier ones, which is lower
 */
public record PatientQuestion(
    Profile lighter,
    PatientGroup light,
    PedalSetting higher,
    Profile heavier,
    PatientGroup heavy,
    PedalSetting lower) {

  /** All such pairs among a unit's preferred answers, each pair of pedals once. */
  public static List<PatientQuestion> of(Unit unit) {
    List<PatientQuestion> questions = new ArrayList<>();
    for (Profile lighter : unit.profiles()) {
      for (Profile heavier : unit.profilesOn(lighter.machine().value())) {
        ask(unit, lighter, heavier, questions);
      }
    }
    return questions;
  }

  private static void ask(
      Unit unit, Profile lighter, Profile heavier, List<PatientQuestion> questions) {
    if (Compared.lesion(lighter, heavier).isEmpty() || !shareASite(lighter, heavier)) {
      return;
    }
    List<PatientGroup> light = unit.patientsOf(lighter);
    List<PatientGroup> heavy = unit.patientsOf(heavier);
    boolean allLighter =
        light.stream().allMatch(one -> heavy.stream().allMatch(other -> isLighter(one, other)));
    if (allLighter && !light.isEmpty() && !heavy.isEmpty()) {
      Compared.pedals(lighter, heavier)
          .forEach(
              pedal ->
                  questions.add(
                      new PatientQuestion(
                          lighter,
                          light.get(0),
                          pedal.higher(),
                          heavier,
                          heavy.get(0),
                          pedal.lower())));
    }
  }

  private static boolean isLighter(PatientGroup one, PatientGroup other) {
    Optional<Boolean> below =
        one.weight()
            .value()
            .below()
            .flatMap(end -> other.weight().value().from().map(begin -> end.compareTo(begin) <= 0));
    return below.orElse(false);
  }

  private static boolean shareASite(Profile one, Profile other) {
    return one.allSites().stream()
        .anyMatch(site -> other.allSites().stream().anyMatch(it -> it.id().equals(site.id())));
  }
}
