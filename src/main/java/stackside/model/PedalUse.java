package stackside.model;

import java.util.Optional;
import stackside.source.Location;

/** What a pedal does in a profile: a setting, or nothing. */
public sealed interface PedalUse permits PedalSetting, Unassigned {
  Location at();

  /** The setting, if the pedal has one. */
  Optional<PedalSetting> setting();
}
