package stackside.derive.coverage;

import java.util.stream.Stream;
import stackside.model.Asset;
import stackside.model.Lesion;
import stackside.model.Machine;
import stackside.model.Offer;
import stackside.model.PatientGroup;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.model.Site;
import stackside.model.Step;
import stackside.model.Thing;
import stackside.model.Unit;

/** One question that a room must answer on one of its generators, and the answer found. */
public record Cell(
    Room room,
    Asset asset,
    Offer offer,
    Lesion lesion,
    Site site,
    Step step,
    PatientGroup patients,
    Cover cover) {

  /**
   * Whether a profile misses this question by exactly one of lesion, site, step and patients; it
   * may have been entered wrongly.
   */
  public boolean missedByOneThing(Unit unit, Profile profile) {
    return Stream.of(
                profile.lesions().stream().anyMatch(it -> same(it.value(), lesion)),
                profile.allSites().stream().anyMatch(it -> same(it, site)),
                same(profile.step().value(), step),
                unit.patientsOf(profile).stream().anyMatch(it -> same(it, patients)))
            .filter(fits -> !fits)
            .count()
        == 1;
  }

  private static boolean same(Thing one, Thing other) {
    return one.id().equals(other.id());
  }

  public Machine machine() {
    return asset.machine().value();
  }
}
