package stackside.derive.circuit;

import java.util.Optional;
import stackside.derive.output.Setting;
import stackside.model.PedalUse;

/** What a pedal does in the active program: a setting, nothing, or unknown. */
public sealed interface PedalMeaning {

  /** The setting, if there is one and it is known. */
  default Optional<Setting> known() {
    return Optional.empty();
  }

  /** The meaning of a pedal according to a profile. */
  static PedalMeaning of(PedalUse use) {
    return use.setting().<PedalMeaning>map(set -> new Sets(Setting.of(set))).orElse(new Nothing());
  }

  /** It delivers this setting. */
  record Sets(Setting setting) implements PedalMeaning {
    @Override
    public Optional<Setting> known() {
      return Optional.of(setting);
    }
  }

  /** It is unassigned. */
  record Nothing() implements PedalMeaning {}

  /** Nobody has read or approved what it does. */
  record Unknown() implements PedalMeaning {}
}
