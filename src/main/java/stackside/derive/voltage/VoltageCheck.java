package stackside.derive.voltage;

import java.util.ArrayList;
import java.util.List;
import stackside.derive.chain.Chain;
import stackside.derive.chain.Chains;
import stackside.derive.chain.Rating;
import stackside.model.Asset;
import stackside.model.Fact;
import stackside.model.PedalSetting;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.model.Settings;
import stackside.model.Unit;
import stackside.quantity.PeakVolts;

/**
 * Compares the peak voltage of an approved setting at its level with the weakest rating of one
 * chain by which the room can connect the instrument. Every chain that can be built counts, because
 * nothing prevents its use.
 */
public record VoltageCheck(
    Room room,
    Asset asset,
    Profile profile,
    PedalSetting pedal,
    Fact<PeakVolts> peak,
    Chain chain,
    Rating weakest) {

  /** Whether the part is rated below the peak voltage. */
  public boolean exceeded() {
    return weakest.rated().value().compareTo(peak.value()) < 0;
  }

  /** All checks of a unit, by room, asset, profile, pedal and chain. */
  public static List<VoltageCheck> of(Unit unit) {
    List<VoltageCheck> checks = new ArrayList<>();
    for (Room room : unit.rooms()) {
      for (Fact<Asset> asset : room.assets()) {
        for (Profile profile : unit.profilesServing(room)) {
          if (profile.machine().value().id().equals(asset.value().machine().value().id())) {
            profile
                .settings()
                .ifPresent(settings -> check(room, asset.value(), profile, settings, checks));
          }
        }
      }
    }
    return checks;
  }

  private static void check(
      Room room, Asset asset, Profile profile, Settings settings, List<VoltageCheck> checks) {
    List<Chain> chains =
        Chains.in(room).between(settings.instrument().value(), settings.socket().value());
    for (PedalSetting pedal : settings.assigned()) {
      pedal
          .mode()
          .value()
          .peakVoltage()
          .flatMap(byLevel -> byLevel.at(pedal.level().map(Fact::value)))
          .ifPresent(
              peak ->
                  chains.forEach(
                      chain ->
                          chain
                              .weakest()
                              .ifPresent(
                                  weakest ->
                                      checks.add(
                                          new VoltageCheck(
                                              room, asset, profile, pedal, peak, chain,
                                              weakest)))));
    }
  }
}
