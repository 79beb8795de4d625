package stackside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What cannot be read is not known to be wrong: cards that it may touch stay as they hang, and no
 * card is made that lacks it.
 */
final class BrokenContentIssueTest {
  @TempDir private Path temporary;
  private Office office;

  @BeforeEach
  void startFromTheFirstIssue() throws IOException {
    office = Office.issued(temporary);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "unit.yaml | phone: ext. 4410 | phne: ext. 4410",
        "unit.yaml | - {id: child, name: Child, weight: 10 kg to 30 kg} | - {id: child, name: Child, weight: 10 to 30}",
        "unit.yaml | checklist: [lead-nurse] | checklist: [leed-nurse]",
        "unit.yaml | profile: 12 months | profile: 12 moons",
        "unit.yaml | status: demonstration | status: demo",
        "unit.yaml | format: 1 | format: 7",
        "unit.yaml | roles: | roles: [",
      })
  void errorInTheUnitItself_issuesNothing(String file, String before, String after)
      throws IOException {
    var site = office.bytes("site");
    office.edit(file, before, after);
    assertThat(office.run("issue")).isEqualTo(1);
    assertThat(office.out).contains("nothing was issued: ");
    assertThat(office.err).contains("unit.yaml:");
    assertThat(office.bytes("site")).isEqualTo(site);
  }

  /** A line that cannot be read in a file of one machine, in one of a generator, in one of all. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "profiles/cordgrass.yaml | limit: 60 W | limit: 60",
        "assets.csv | 'EQ-0417,' | 'EQ 0417,'",
        "lesions.yaml | size: | sise:",
      })
  void lineThatCannotBeRead_takesNoCardDownAndMakesNoneAnew(
      String file, String before, String after) throws Exception {
    var cards = office.bytes("site/cards");
    var register = office.register().cards();
    office.edit(file, before, after);
    int code = office.run("issue", "--on", "2026-11-24");
    assertThat(code).isEqualTo(1);
    assertThat(office.bytes("site/cards")).isEqualTo(cards);
    assertThat(office.register().cards()).isEqualTo(register);
    assertThat(office.out).doesNotContain("print these", "take down");
  }

  /** The other files that a card draws on. */
  @Tag("thorough")
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "profiles/orache.yaml | profiles: | profiles: [",
        "machines/restharrow.yaml | selects-socket: | selects-sockets:",
        "rooms/room-2.yaml | copies: | copy:",
        "instruments.yaml | oval-snare-15 | oval snare 15",
        "drills/no-effect.yaml | title | titel",
        "service-events.csv | EQ- | EQ ",
      })
  void lineThatCannotBeRead_takesNoCardDownInAnyFile(String file, String before, String after)
      throws Exception {
    lineThatCannotBeRead_takesNoCardDownAndMakesNoneAnew(file, before, after);
  }

  @Test
  void lineThatCannotBeRead_doesNotHoldUpAnotherMachinesCorrection() throws Exception {
    office.edit("profiles/cordgrass.yaml", "limit: 60 W", "limit: 60");
    office.edit("profiles/orache.yaml", "{mode: blend, limit: 40 W}", "{mode: blend, limit: 35 W}");
    office.signAll("2026-11-22");
    assertThat(office.run("issue", "--on", "2026-11-24")).isEqualTo(1);
    List<String> printed = office.out.lines().filter(l -> l.startsWith("print these")).toList();
    assertThat(printed)
        .singleElement()
        .asString()
        .contains("Room A, EQ-0209: Settings, flat polyps");
    assertThat(office.out).contains("stays up: Room 2, EQ-0417");
  }

  /** Facts that lack a cable or a contact would be signed without it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "unit.yaml | phone: ext. 4410 | phne: ext. 4410",
        "cables.yaml | rated-voltage | rated-voltages",
        "lesions.yaml | size: | sise:",
      })
  void listThatCannotBeRead_isNotSignedOn(String file, String before, String after)
      throws IOException {
    office.edit(file, before, after);
    int code =
        office.answering("yes\n".repeat(9), "approve", "--role", "lead-nurse", "--initials", "KM");
    assertThat(code).isEqualTo(1);
    assertThat(office.told()).contains("nothing was signed");
  }
}
