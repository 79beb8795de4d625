package stackside.render.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import stackside.Units;
import stackside.model.Drill;
import stackside.model.Lamp;
import stackside.model.Machine;
import stackside.model.ProgramReading;
import stackside.model.Room;
import stackside.model.Unit;

/** A fact has one wording, on whatever page it stands. */
final class WordingTest {

  private static final Unit UNIT = Units.demonstration();
  private static final Map<String, String> PAGES = pages();

  private static Map<String, String> pages() {
    Map<String, String> pages = new TreeMap<>();
    DemonstrationSite.pages()
        .forEach(
            page ->
                pages.put(
                    page.path(),
                    Jsoup.parse(new String(page.bytes(), StandardCharsets.UTF_8))
                        .text()
                        .replace('\u00a0', ' ')));
    return pages;
  }

  private static String page(String path) {
    return PAGES.getOrDefault(path, "no page " + path);
  }

  @Test
  void noAbbreviationLosesItsFirstCapital() {
    assertThat(PAGES.values()).noneMatch(text -> text.matches("(?s).*\\b[a-z][A-Z]{2,}\\b.*"));
  }

  @Test
  void storedLevelsHaveTheNameThatTheDisplayUses() {
    List<ProgramReading> levelled =
        UNIT.programReadings().stream().filter(each -> each.level().isPresent()).toList();
    assertThat(levelled)
        .isNotEmpty()
        .allSatisfy(
            each ->
                assertThat(page("assets/" + each.asset().value().id().slug() + ".html"))
                    .contains(
                        each.mode().orElseThrow().value().title()
                            + ", "
                            + each.mode().orElseThrow().value().level().orElseThrow().name().value()
                            + " "
                            + each.level().orElseThrow().value().text()));
  }

  /** As the page of the rule spares-place-missing has it. */
  @Test
  void thePageOfARoomSaysWhereItsSparesAre() {
    List<Room> rooms =
        UNIT.rooms().stream().filter(each -> each.keeps().sparesWhere().isPresent()).toList();
    assertThat(rooms)
        .isNotEmpty()
        .allSatisfy(
            room ->
                assertThat(page("rooms/" + room.id().slug() + ".html"))
                    .contains(room.keeps().sparesWhere().orElseThrow().value()));
  }

  @Test
  void drillsNameLampsAsTheMachinesDo() {
    for (Drill drill : UNIT.drills()) {
      for (Machine machine : UNIT.machines()) {
        if (UNIT.drillsFor(machine).contains(drill)) {
          drill.sign().lamps().keySet().stream()
              .flatMap(id -> machine.lamp(id).stream())
              .forEach(
                  lamp ->
                      assertThat(page("drills/" + drill.id().slug() + ".html"))
                          .contains(lamp.name().value()));
        }
      }
    }
  }

  @Test
  void differencesNameLampsAsTheMachinesDo() {
    List<Lamp> lamps = UNIT.machines().stream().flatMap(each -> each.lamps().stream()).toList();
    String differences =
        PAGES.entrySet().stream()
            .filter(page -> page.getKey().startsWith("differences/"))
            .map(Map.Entry::getValue)
            .collect(Collectors.joining("\n"));
    assertThat(lamps).anyMatch(lamp -> differences.contains(lamp.name().value() + " "));
    String rest = differences;
    for (Lamp lamp : lamps) {
      rest = rest.replace(lamp.name().value(), "");
    }
    for (Lamp lamp : lamps) {
      assertThat(rest).doesNotContain(lamp.id().slug().replace('-', ' ') + " ");
    }
  }
}
