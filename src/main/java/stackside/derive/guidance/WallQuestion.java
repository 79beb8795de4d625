package stackside.derive.guidance;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stackside.model.Lesion;
import stackside.model.PedalSetting;
import stackside.model.Profile;
import stackside.model.Site;
import stackside.model.ThingId;
import stackside.model.Unit;

/**
 * The same mode set higher where the unit itself classifies the wall as thinner: same machine,
 * lesion, step, pedal and patients. Lower settings in the right colon are usual (81.6 % of 250 UK
 * endoscopists; Verma and Chilton, Frontline Gastroenterology 2019;10:120). Measured thickness is
 * disputed, however, so the question uses the unit's own wall classes.
 *
 * @param thinner the setting at the thinner wall, which is higher
 * @param thicker the setting at the thicker wall, which is lower
 */
public record WallQuestion(
    Profile thinner,
    Site thinnerSite,
    PedalSetting higher,
    Profile thicker,
    Site thickerSite,
    PedalSetting lower,
    Lesion lesion) {

  /** All such pairs among a unit's preferred answers, each pair of pedals once. */
  public static List<WallQuestion> of(Unit unit) {
    List<WallQuestion> questions = new ArrayList<>();
    for (Profile thinner : unit.profiles()) {
      for (Profile thicker : unit.profilesOn(thinner.machine().value())) {
        ask(unit, thinner, thicker, questions);
      }
    }
    return questions;
  }

  private static void ask(
      Unit unit, Profile thinner, Profile thicker, List<WallQuestion> questions) {
    Optional<Lesion> lesion = Compared.lesion(thinner, thicker);
    if (lesion.isPresent() && sharePatients(unit, thinner, thicker)) {
      wallPair(thinner, thicker)
          .ifPresent(walls -> questions.addAll(pedals(thinner, thicker, walls, lesion.get())));
    }
  }

  private record Walls(Site thinner, Site thicker) {}

  private static Optional<Walls> wallPair(Profile thinner, Profile thicker) {
    return thinner.allSites().stream()
        .flatMap(
            thin ->
                thicker.allSites().stream()
                    .filter(thick -> isThinner(thin, thick))
                    .map(thick -> new Walls(thin, thick)))
        .findFirst();
  }

  private static boolean isThinner(Site one, Site other) {
    return one.wall().value().compareTo(other.wall().value()) < 0;
  }

  private static List<WallQuestion> pedals(
      Profile thinner, Profile thicker, Walls walls, Lesion lesion) {
    return Compared.pedals(thinner, thicker).stream()
        .map(
            pedal ->
                new WallQuestion(
                    thinner,
                    walls.thinner(),
                    pedal.higher(),
                    thicker,
                    walls.thicker(),
                    pedal.lower(),
                    lesion))
        .toList();
  }

  private static boolean sharePatients(Unit unit, Profile one, Profile other) {
    Set<ThingId> groups = new LinkedHashSet<>();
    unit.patientsOf(one).forEach(group -> groups.add(group.id()));
    return unit.patientsOf(other).stream().anyMatch(group -> groups.contains(group.id()));
  }
}
