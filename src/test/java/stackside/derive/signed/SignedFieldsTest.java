package stackside.derive.signed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stackside.Units;
import stackside.model.Checklist;
import stackside.model.Drill;
import stackside.model.Machine;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.model.SignedKind;
import stackside.model.Thing;
import stackside.model.Unit;

/**
 * Changes every component of everything that is signed, found by reflection: each change makes the
 * signature void and is told with its place, the old value and the new one.
 */
final class SignedFieldsTest {
  private static final Unit WHOLE = Units.read("whole");
  private static final Unit DEMONSTRATION = Units.demonstration();

  static Stream<Class<? extends Thing>> signed() {
    return Stream.of(Profile.class, Machine.class, Drill.class, Checklist.class, Room.class);
  }

  private static Stream<Thing> things(Unit unit, Class<?> type) {
    return unit.things().filter(type::isInstance);
  }

  @ParameterizedTest
  @MethodSource("signed")
  void everyChangedComponent_makesTheSignatureVoid(Class<? extends Thing> type) {
    Set<String> noticed = new TreeSet<>();
    int[] cases = {0};
    for (Unit unit : List.of(WHOLE, DEMONSTRATION)) {
      things(unit, type)
          .forEach(
              thing -> {
                SignedFacts before = SignedFacts.of(unit, thing).orElseThrow();
                Variations.of(thing)
                    .forEach(
                        change -> {
                          if (isNoticed(unit, before, change)) {
                            noticed.add(change.component());
                          }
                          cases[0]++;
                        });
              });
    }
    System.out.println(type.getSimpleName() + ": " + cases[0] + " changes");
    assertThat(noticed).containsAll(Variations.components(type));
  }

  private static boolean isNoticed(Unit unit, SignedFacts before, Variations.Variation change) {
    SignedFacts after = SignedFacts.of(unit, (Thing) change.value()).orElseThrow();
    assertThat(after.fingerprint())
        .as("%s of %s changed", change.component(), before.thing())
        .isNotEqualTo(before.fingerprint());
    List<FactChange> told = FactChange.between(before.facts(), after.facts());
    boolean onlyTheId = !before.thing().equals(after.thing());
    assertThat(told.isEmpty())
        .as("%s of %s told", change.component(), before.thing())
        .isEqualTo(onlyTheId);
    told.forEach(each -> assertThat(each.words()).contains(": ", " → "));
    return true;
  }

  @ParameterizedTest
  @MethodSource("signed")
  void everyKindThatIsSigned_isAmongThem(Class<? extends Thing> type) {
    assertThat(SignedKind.values()).hasSize((int) signed().count());
    assertThat(things(WHOLE, type)).as("things of the unit that holds everything").isNotEmpty();
  }
}
