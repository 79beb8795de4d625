package stackside.derive.guidance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.model.Fact;
import stackside.model.Lesion;
import stackside.model.Level;
import stackside.model.LevelScale;
import stackside.model.PedalColour;
import stackside.model.PedalSetting;
import stackside.model.Profile;

/**
 * One pedal in two answers, with the same mode set higher in the first.
 *
 * @param higher the setting of the first answer
 * @param lower the setting of the second
 */
record Compared(PedalSetting higher, PedalSetting lower) {

  /** The pedals that the first answer sets higher than the second. */
  static List<Compared> pedals(Profile first, Profile second) {
    List<Compared> pedals = new ArrayList<>();
    for (PedalColour colour : PedalColour.values()) {
      Optional<PedalSetting> higher = on(first, colour);
      Optional<PedalSetting> lower = on(second, colour);
      if (higher.isPresent() && lower.isPresent() && isHigher(higher.get(), lower.get())) {
        pedals.add(new Compared(higher.get(), lower.get()));
      }
    }
    return pedals;
  }

  /** The lesion that two preferred answers share in the same step, if they do. */
  static Optional<Lesion> lesion(Profile one, Profile other) {
    boolean alike =
        one.preferred()
            && other.preferred()
            && !one.id().equals(other.id())
            && one.step().value().id().equals(other.step().value().id());
    return one.lesions().stream()
        .filter(lesion -> alike)
        .map(Fact::value)
        .filter(
            lesion ->
                other.lesions().stream().anyMatch(each -> each.value().id().equals(lesion.id())))
        .findFirst();
  }

  private static Optional<PedalSetting> on(Profile profile, PedalColour colour) {
    return profile.settings().flatMap(settings -> settings.pedal(colour).setting());
  }

  /** Whether one is the same mode at a higher level or a higher power limit. */
  private static boolean isHigher(PedalSetting one, PedalSetting other) {
    if (!one.mode().value().id().equals(other.mode().value().id())) {
      return false;
    }
    boolean morePower =
        one.limit().isPresent()
            && other.limit().isPresent()
            && one.limit().get().value().compareTo(other.limit().get().value()) > 0;
    return morePower || rank(one) > rank(other);
  }

  private static int rank(PedalSetting pedal) {
    List<Level> levels = pedal.mode().value().level().map(LevelScale::levels).orElse(List.of());
    return pedal.level().map(Fact::value).map(levels::indexOf).orElse(-1);
  }
}
