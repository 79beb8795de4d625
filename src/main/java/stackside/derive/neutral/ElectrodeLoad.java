package stackside.derive.neutral;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.derive.output.ModeOutput;
import stackside.derive.output.ModeSetting;
import stackside.energy.Heating;
import stackside.model.Electrode;
import stackside.model.EnergyKind;
import stackside.model.Fact;
import stackside.model.PedalSetting;
import stackside.model.Profile;
import stackside.model.Unit;
import stackside.quantity.AmpereSquaredSeconds;
import stackside.quantity.Amperes;
import stackside.quantity.Seconds;

/**
 * What one approved setting demands of the neutral electrode that the profile names. It takes the
 * highest current over the published loads, averages it over the timing of a pulsed mode, squares
 * it, and multiplies it by a minute. It also gives how much of a minute the electrode's own
 * declared limit allows. This is about the electrode alone.
 *
 * @param withinBurst root mean square, at the lowest load, where the highest current flows
 * @param averaged root mean square over the whole cycle; the same if the mode is not pulsed
 * @param throughMinute the heating factor if the pedal were pressed for a whole minute
 * @param limit the electrode's declared limit; absent if none is declared
 * @param inAnyMinute seconds of activation in any minute before the limit is reached
 */
public record ElectrodeLoad(
    Profile profile,
    PedalSetting pedal,
    Electrode electrode,
    ModeOutput output,
    Amperes withinBurst,
    Amperes averaged,
    AmpereSquaredSeconds throughMinute,
    Optional<AmpereSquaredSeconds> limit,
    Optional<Seconds> inAnyMinute) {

  /** All approved settings that use a neutral electrode and have a published output. */
  public static List<ElectrodeLoad> of(Unit unit) {
    List<ElectrodeLoad> loads = new ArrayList<>();
    for (Profile profile : unit.profiles()) {
      profile
          .settings()
          .ifPresent(
              settings ->
                  settings
                      .neutralElectrode()
                      .ifPresent(
                          electrode ->
                              settings
                                  .assigned()
                                  .forEach(
                                      pedal ->
                                          of(profile, pedal, electrode.value())
                                              .ifPresent(loads::add))));
    }
    return loads;
  }

  private static Optional<ElectrodeLoad> of(
      Profile profile, PedalSetting pedal, Electrode electrode) {
    if (pedal.mode().value().kind().value() == EnergyKind.BIPOLAR) {
      return Optional.empty();
    }
    return ModeOutput.of(profile.machine().value(), ModeSetting.of(pedal))
        .map(output -> of(profile, pedal, electrode, output));
  }

  private static ElectrodeLoad of(
      Profile profile, PedalSetting pedal, Electrode electrode, ModeOutput output) {
    Amperes withinBurst = output.curve().highestCurrent();
    Amperes averaged = output.duty().averaged(withinBurst);
    Optional<AmpereSquaredSeconds> limit = electrode.heatingFactor().map(Fact::value);
    return new ElectrodeLoad(
        profile,
        pedal,
        electrode,
        output,
        withinBurst,
        averaged,
        Heating.factor(averaged, Heating.MINUTE),
        limit,
        limit.map(most -> Heating.inAnyMinute(most, averaged)));
  }
}
