package stackside.derive.signed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stackside.derive.Edited;
import stackside.model.Kind;
import stackside.model.Profile;
import stackside.model.Unit;

/**
 * What a signature under an answer rests on outside the answer: of its machine the mode at the
 * level that is set, and the socket; the ratings of all that lies between. Nothing else of the
 * machine.
 */
final class ProfileFactsTest {
  private static final Unit BASE = Edited.base("");

  private static Unit edited(String file, String before, String after) {
    return Edited.base("=== %s\n-%s\n+%s\n".formatted(file, before, after));
  }

  private static List<FactChange> changes(Unit unit) {
    return FactChange.between(facts(BASE), facts(unit));
  }

  private static Json.Members facts(Unit unit) {
    Profile profile = Edited.find(unit, Kind.PROFILE, "arrowgrass-large-caecum", Profile.class);
    return SignedFacts.of(unit, profile).orElseThrow().facts();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "machines/arrowgrass.yaml | peak-voltage: {1: 480 V peak, 2: 520 V peak, 3: 600 V peak} | peak-voltage: {1: 480 V peak, 2: 530 V peak, 3: 600 V peak} | settings yellow mode peak-voltage: 520 V peak → 530 V peak",
        "machines/arrowgrass.yaml | power-limit: 10 W to 110 W in steps of 5 W | power-limit: 10 W to 100 W in steps of 5 W | settings yellow mode power-limit: 10 W to 110 W in steps of 5 W → 10 W to 100 W in steps of 5 W",
        "machines/arrowgrass.yaml | crest-factor: 1.5 | crest-factor: 1.6 | settings yellow mode crest-factor: 1.5 → 1.6",
        "machines/arrowgrass.yaml | peak-voltage: {1: 1000 V peak, 2: 1300 V peak} | peak-voltage: {1: 1100 V peak, 2: 1300 V peak} | settings blue mode peak-voltage: 1000 V peak → 1100 V peak",
        "cables.yaml | - {id: snare-cable, name: Snare cable, plug: three-pin, connector: pin-3, rated-voltage: 4000 V peak} | - {id: snare-cable, name: Snare cable, plug: three-pin, connector: pin-3, rated-voltage: 3000 V peak} | settings cables snare-cable rated-voltage: 4000 V peak → 3000 V peak",
        "instruments.yaml | - {id: snare, name: Oval snare, kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak} | - {id: snare, name: Oval snare, kind: monopolar, connector: pin-3, rated-voltage: 1800 V peak} | settings instrument rated-voltage: 2000 V peak → 1800 V peak",
      })
  void whatTheAnswerRestsOn_isSignedWithIt(
      String file, String before, String after, String change) {
    assertThat(changes(edited(file, before, after)))
        .extracting(FactChange::words)
        .containsExactly(change);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "machines/arrowgrass.yaml | peak-voltage: {1: 480 V peak, 2: 520 V peak, 3: 600 V peak} | peak-voltage: {1: 470 V peak, 2: 520 V peak, 3: 600 V peak}",
        "machines/arrowgrass.yaml | peak-voltage: {low: 120 V peak, high: 160 V peak} | peak-voltage: {low: 110 V peak, high: 160 V peak}",
        "machines/arrowgrass.yaml | programs: 1 to 20 | programs: 1 to 30",
        "machines/arrowgrass.yaml | - {id: plate-lamp, name: Plate lamp} | - {id: plate-lamp, name: Lamp of the plate}",
        "instruments.yaml | - {id: grasper, name: Two-pole grasper, kind: bipolar, connector: two-pin, rated-voltage: 500 V peak} | - {id: grasper, name: Two-pole grasper, kind: bipolar, connector: two-pin, rated-voltage: 400 V peak}",
      })
  void whatItDoesNotRestOn_leavesTheSignatureAlone(String file, String before, String after) {
    assertThat(changes(edited(file, before, after))).isEmpty();
  }
}
