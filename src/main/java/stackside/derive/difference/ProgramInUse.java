package stackside.derive.difference;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeMap;
import stackside.model.Fact;
import stackside.model.Lesion;
import stackside.model.Profile;
import stackside.model.Site;
import stackside.model.StoredProgram;
import stackside.model.ThingId;

/** A stored program, and what it is approved for at one place. */
public record ProgramInUse(int slot, String shownAs, List<Profile> profiles) {
  public ProgramInUse {
    profiles = List.copyOf(profiles);
  }

  static List<ProgramInUse> of(List<Profile> profiles) {
    TreeMap<Integer, List<Profile>> bySlot = new TreeMap<>();
    TreeMap<Integer, String> names = new TreeMap<>();
    for (Profile profile : profiles) {
      profile
          .settings()
          .flatMap(settings -> settings.program())
          .ifPresent(
              (StoredProgram program) -> {
                int slot = program.slot().value();
                bySlot.computeIfAbsent(slot, each -> new ArrayList<>()).add(profile);
                names.putIfAbsent(slot, program.shownAs().value());
              });
    }
    List<ProgramInUse> programs = new ArrayList<>();
    bySlot.forEach(
        (slot, all) -> programs.add(new ProgramInUse(slot, names.getOrDefault(slot, ""), all)));
    return programs;
  }

  /**
   * Whether somebody who mistakes one for the other still does what they intended: it is the same
   * program of the same model, or both are approved for the same step of a lesion at a site.
   */
  boolean means(ProgramInUse other) {
    return isSameAs(other) || !Collections.disjoint(purpose(), other.purpose());
  }

  private boolean isSameAs(ProgramInUse other) {
    return slot == other.slot && shownAs.equals(other.shownAs()) && model().equals(other.model());
  }

  private ThingId model() {
    return profiles.get(0).machine().value().id();
  }

  private List<List<ThingId>> purpose() {
    List<List<ThingId>> purpose = new ArrayList<>();
    for (Profile profile : profiles) {
      for (Fact<Lesion> lesion : profile.lesions()) {
        for (Site site : profile.allSites()) {
          purpose.add(List.of(lesion.value().id(), site.id(), profile.step().value().id()));
        }
      }
    }
    return purpose;
  }
}
