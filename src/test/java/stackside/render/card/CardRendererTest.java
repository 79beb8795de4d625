package stackside.render.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stackside.inspect.EditedUnit;
import stackside.inspect.Inspection;
import stackside.render.OutputFile;
import stackside.source.Problem;

/** Cards that cannot be printed as planned, and the messages about them. */
final class CardRendererTest {

  private static final String LONGER_LIST =
      """
      === checklists/set-up.yaml
      -  - {do: Name each pedal aloud, see: Same as the card, guards: [wrong-pedal, foot-switch-out]}
      +  - {do: Name each pedal aloud, see: Same as the card, guards: [wrong-pedal, foot-switch-out]}
      +  - {do: Look at the first thing, see: As on the card}
      +  - {do: Look at the second thing, see: As on the card}
      +  - {do: Look at the third thing, see: As on the card}
      +  - {do: Look at the fourth thing, see: As on the card}
      """;

  private static List<Problem> of(EditedUnit unit, String id) {
    return unit.cards().problems().stream()
        .filter(problem -> problem.fault().id().equals(id))
        .toList();
  }

  @Test
  void cardThatIsTooHigh_saysByHowMuchAndWhatToMove() {
    assertThat(of(EditedUnit.after(LONGER_LIST), "card-overflows-page"))
        .first()
        .satisfies(
            problem -> {
              assertThat(problem.at().file()).isEqualTo("rooms/room-1.yaml");
              assertThat(problem.message())
                  .matches(
                      "the card 'Set up, and when it fails' of Room 1, EQ-1 is \\d+ mm too high for its"
                          + " page");
              assertThat(problem.help().orElseThrow()).contains("'Alarm sounds'", "on-card: no");
            });
  }

  @Test
  void cardThatIsTooHigh_becomesAPageThatSaysSo() {
    EditedUnit unit = EditedUnit.after(LONGER_LIST);
    OutputFile file = unit.file("room-1-eq-1-set-up");
    assertThat(unit.cards().printed()).doesNotContain(file);
    assertThat(Inspection.of(file).text())
        .contains("this card cannot be printed yet", "too high for its page")
        .doesNotContain("Trace the cable");
  }

  private static final String UPPER_SITES =
      """
      === sites.yaml
      +  - {id: stomach, name: Stomach, tract: upper, wall: thick}
      +  - {id: duodenum, name: Duodenum, tract: upper, wall: thin}
       groups:
      === rooms/room-1.yaml
      -  - {lesions: [flat-small, flat-large, angiodysplasia], sites: [colon]}
      +  - {lesions: [flat-small, flat-large, angiodysplasia], sites: [colon, stomach, duodenum]}
      """;

  /** A room with a separate answer for each lesion, site and patient group. */
  private static String bigRoom(List<String> sites) {
    StringBuilder patch =
        new StringBuilder("=== without profiles/arrowgrass.yaml\n=== profiles/many.yaml\n");
    patch.append("+machine: arrowgrass\n+profiles:\n");
    int number = 0;
    for (String lesion : List.of("flat-small", "flat-large", "angiodysplasia")) {
      String step = lesion.equals("angiodysplasia") ? "treatment" : "resection";
      for (String site : sites) {
        for (String patients : List.of("adult", "child")) {
          patch.append(
              "+  - {id: p-%d, lesions: [%s], sites: [%s], step: %s, patients: [%s], cold: Way %d.}\n"
                  .formatted(number, lesion, site, step, patients, number));
          number++;
        }
      }
    }
    return patch.toString();
  }

  private static String advice(EditedUnit unit) {
    return of(unit, "card-overflows-page").stream()
        .filter(problem -> problem.message().contains("'Settings"))
        .map(problem -> problem.help().orElseThrow())
        .collect(Collectors.joining("\n"));
  }

  /** The cards suggested by the advice, as lines of the room's file. */
  private static String asAdvised(String advice) {
    String cards =
        Pattern.compile("\\{name: .*?\\}(?= takes)")
            .matcher(advice)
            .results()
            .map(found -> "+  - " + found.group() + "\n")
            .collect(Collectors.joining());
    return "=== rooms/room-1.yaml\n+cards:\n" + cards;
  }

  @Test
  void roomWithRowsOfBothTracts_isToldWhichMoveToUpperAndLower() {
    String big = UPPER_SITES + bigRoom(List.of("caecum", "rectum", "stomach", "duodenum"));
    String advice = advice(EditedUnit.after(big));
    assertThat(advice)
        .startsWith("divide the rows between 2 cards with `cards:` in the room: ")
        .contains(
            "{name: lower, sites: [colon]} takes 'Flat, under 10\u00a0mm: resection, adult only, Caecum'",
            "{name: upper, sites: [stomach, duodenum]} takes");
    String sharedOut = advice(EditedUnit.after(big + asAdvised(advice)));
    assertThat(sharedOut).contains("{name: lower first, sites: [colon], lesions: [");
  }

  @Test
  void roomSharedOutAsAdvised_hasNoCardThatIsTooHigh() {
    String big = bigRoom(List.of("caecum", "rectum"));
    String advice = advice(EditedUnit.after(big));
    assertThat(advice).contains("{name: first, sites: [colon], lesions: [flat-small");
    EditedUnit sharedOut = EditedUnit.after(big + asAdvised(advice));
    assertThat(of(sharedOut, "card-overflows-page")).isEmpty();
    assertThat(sharedOut.problems()).noneMatch(p -> p.fault().id().equals("too-many-rows"));
    assertThat(sharedOut.plans()).extracting(plan -> plan.title()).contains("Settings, first");
  }

  @Test
  void letterThatTheTypefaceLacks_isNeverSilentlyLeftOut() {
    EditedUnit unit =
        EditedUnit.after(
            """
            === drills/no-effect.yaml
            -never: Turn the power up instead.
            +never: Turn the power up → burn.
            """);
    assertThat(of(unit, "letter-not-in-font"))
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.at().file()).isEqualTo("drills/no-effect.yaml");
              assertThat(problem.at().line()).isEqualTo(11);
              assertThat(problem.message()).contains("'→'");
            });
    assertThat(unit.cards().printed()).noneMatch(file -> file.path().contains("set-up"));
  }

  @Test
  void nameThatIsTooWide_isFoundAtTheName() {
    EditedUnit unit =
        EditedUnit.after(
            """
            === rooms/room-1.yaml
            -name: Room 1
            +name: Interventional endoscopy and radiology theatre
            """);
    assertThat(of(unit, "words-too-wide-for-card"))
        .first()
        .satisfies(
            problem -> assertThat(problem.at().toString()).startsWith("rooms/room-1.yaml:2"));
  }

  @Test
  void addressThatIsTooLong_isFound() {
    EditedUnit unit =
        EditedUnit.after(
            """
            === unit.yaml
            -address: https://culvert.example/
            +address: https://intranet.hospital.example/departments/endoscopy/electrosurgery/rooms/cards-and-induction/current-edition/
            """);
    assertThat(of(unit, "address-too-long-for-code")).isNotEmpty();
  }
}
