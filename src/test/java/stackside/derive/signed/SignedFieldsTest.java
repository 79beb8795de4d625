package stackside.derive.signed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stackside.Units;
import stackside.derive.Edited;
import stackside.model.Asset;
import stackside.model.Checklist;
import stackside.model.Citation;
import stackside.model.Drill;
import stackside.model.Machine;
import stackside.model.OutputCheckPolicy;
import stackside.model.Profile;
import stackside.model.ReadingDistance;
import stackside.model.Room;
import stackside.model.SignedKind;
import stackside.model.Thing;
import stackside.model.Unit;
import stackside.model.UnitDetails;
import stackside.source.Location;

/**
 * Changes every component of everything that is signed, found by reflection: each change makes the
 * signature void and is told with its place, the old value and the new one.
 */
final class SignedFieldsTest {
  private static final Unit WHOLE = Units.read("whole");
  private static final Unit DEMONSTRATION = Units.demonstration();

  /** What is signed once for the whole unit, and what has no text of its own. */
  private static final EnumSet<SignedKind> OF_THE_UNIT =
      EnumSet.of(SignedKind.SOURCES, SignedKind.POLICIES);

  /** Signed with each room or profile, and the form that the reader holds the content to. */
  private static final Set<String> SIGNED_ELSEWHERE =
      Set.of(
          "UnitDetails.format",
          "UnitDetails.locations",
          "UnitDetails.makeSafe",
          "UnitDetails.patients");

  static Stream<Class<? extends Thing>> signed() {
    return Stream.of(
        Profile.class, Machine.class, Drill.class, Checklist.class, Room.class, Asset.class);
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
    assertThat(EnumSet.complementOf(OF_THE_UNIT)).hasSize((int) signed().count());
    assertThat(things(WHOLE, type)).as("things of the unit that holds everything").isNotEmpty();
  }

  @Test
  void everyChangedPolicyOfTheUnit_makesItsSignatureVoid() {
    SignedFacts before = SignedFacts.of(WHOLE, WHOLE.policies()).orElseThrow();
    Set<String> noticed = new TreeSet<>();
    Variations.components(WHOLE.details())
        .forEach(
            change -> {
              Unit changed = Variations.with(WHOLE, "details", change.value());
              SignedFacts after = SignedFacts.of(changed, changed.policies()).orElseThrow();
              if (!FactChange.between(before.facts(), after.facts()).isEmpty()) {
                noticed.add(change.component());
              }
            });
    Set<String> wanted =
        new TreeSet<>(
            Stream.of(UnitDetails.class.getRecordComponents())
                .filter(part -> part.getType() != Location.class)
                .map(part -> "UnitDetails." + part.getName())
                .toList());
    wanted.removeAll(SIGNED_ELSEWHERE);
    wanted.removeAll(Set.of("UnitDetails.readingDistance", "UnitDetails.outputCheck"));
    wanted.addAll(Variations.components(ReadingDistance.class));
    wanted.addAll(Variations.components(OutputCheckPolicy.class));
    assertThat(noticed).containsAll(wanted);
  }

  /**
   * Words of cards are signed with the policies; other words, and a unit without any, change
   * nothing.
   */
  @Test
  void ownWordsThatReachCards_makeTheSignatureOfThePoliciesVoid() {
    Unit base = Edited.base("");
    SignedFacts before = SignedFacts.of(base, base.policies()).orElseThrow();
    assertThat(before.facts().values()).doesNotContainKey("card-words");
    Unit paged = Edited.base("=== templates/words/en-GB.txt\n+menu.rooms = Theatres\n");
    assertThat(SignedFacts.of(paged, paged.policies()).orElseThrow().fingerprint())
        .isEqualTo(before.fingerprint());
    Unit worded =
        Edited.base("=== templates/words/en-GB.txt\n+card.column-yellow = Yellow pedal: cut\n");
    SignedFacts after = SignedFacts.of(worded, worded.policies()).orElseThrow();
    assertThat(FactChange.between(before.facts(), after.facts()))
        .extracting(FactChange::words)
        .containsExactly("card-words card.column-yellow: nothing → Yellow pedal: cut");
  }

  @Test
  void everyChangedSource_makesTheSignatureOfTheListVoid() {
    SignedFacts before = SignedFacts.of(WHOLE, WHOLE.sources()).orElseThrow();
    Set<String> noticed = new TreeSet<>();
    for (Citation citation : WHOLE.citations()) {
      Variations.of(citation)
          .forEach(
              change -> {
                List<Citation> others =
                    WHOLE.citations().stream()
                        .map(each -> each.equals(citation) ? (Citation) change.value() : each)
                        .toList();
                Unit changed = Variations.with(WHOLE, "citations", others);
                SignedFacts after = SignedFacts.of(changed, changed.sources()).orElseThrow();
                assertThat(FactChange.between(before.facts(), after.facts()))
                    .as(change.component())
                    .isNotEmpty();
                noticed.add(change.component());
              });
    }
    assertThat(noticed).containsAll(Variations.components(Citation.class));
  }
}
