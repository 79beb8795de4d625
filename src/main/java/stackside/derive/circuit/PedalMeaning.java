package stackside.derive.circuit;

import java.util.Optional;
import stackside.derive.output.ModeSetting;
import stackside.model.PedalUse;

/** What a pedal does in the active program: a setting, nothing, or unknown. */
public sealed interface PedalMeaning {

  /** The setting, if there is one and it is known. */
  default Optional<ModeSetting> known() {
    return Optional.empty();
  }

  /** The meaning of a pedal according to a profile. */
  static PedalMeaning of(PedalUse use) {
    return use.setting().<PedalMeaning>map(set -> new Sets(ModeSetting.of(set))).orElse(new Nothing());
  }

  /** It delivers this setting. */
  record Sets(ModeSetting setting) implements PedalMeaning {
    @Override
    public Optional<ModeSetting> known() {
      return Optional.of(setting);
    }
  }

  /** It is unassigned. */
  record Nothing() implements PedalMeaning {}

  /** Nobody has read or approved what it does. */
  record Unknown() implements PedalMeaning {}
}
