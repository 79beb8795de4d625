package stackside.render.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import stackside.derive.Edited;
import stackside.render.Marking;
import stackside.render.OutputFile;

/** What a machine's description leaves out is dark with the mains off and not known otherwise. */
final class MachineAnswersTest {
  private static List<OutputFile> files = List.of();

  @BeforeAll
  static void renderAUnitWhoseAnswersLeaveMuchOut() {
    files =
        DemonstrationSite.render(
            Edited.base(
                """
                === machines/arrowgrass.yaml
                -  foot-switch-missing: {tone: none, lamps: {plate-lamp: green}, output: none, evidence: manual}
                -  mains-off: {tone: none, lamps: {plate-lamp: dark}, output: none, evidence: manual}
                +  foot-switch-missing: {evidence: manual}
                +  mains-off: {evidence: manual}
                """),
            Marking.DRAFT);
  }

  @Test
  void onThePageOfTheMachine() {
    Map<String, List<String>> rows = rows("machines/arrowgrass.html");
    assertThat(rows.get("The mains power is off"))
        .containsExactly("none", "Plate lamp dark", "dark", "none", "manual");
    assertThat(rows.get("No foot switch is plugged in"))
        .containsExactly("not known", "Plate lamp not known", "not known", "not known", "manual");
    assertThat(rows.get("The neutral electrode's circuit is open"))
        .containsExactly("alarm", "Plate lamp red", "not known", "none", "manual");
  }

  @Test
  void amongTheFailureSigns() {
    String page =
        files.stream()
            .map(OutputFile::path)
            .filter(path -> path.startsWith("failure-signs/room-1/"))
            .findFirst()
            .orElseThrow();
    Map<String, List<String>> rows = rows(page);
    assertThat(rows.get("Mains off")).contains("no tone; Plate lamp dark; display dark");
    assertThat(rows.get("Foot switch not plugged in"))
        .contains("sound not known; Plate lamp not known; display not known");
  }

  @Test
  void amongTheDifferencesBetweenRooms() {
    List<String> answers =
        files.stream()
            .filter(file -> file.path().startsWith("differences/"))
            .flatMap(file -> Jsoup.parse(text(file)).select("li").stream())
            .map(Element::text)
            .filter(line -> line.startsWith("The mains power is off:"))
            .toList();
    assertThat(answers)
        .isNotEmpty()
        .allMatch(line -> line.contains("no tone") && line.contains("display dark"))
        .noneMatch(line -> line.contains("not known"));
  }

  private static Map<String, List<String>> rows(String path) {
    Document page =
        files.stream()
            .filter(file -> file.path().equals(path))
            .map(file -> Jsoup.parse(text(file)))
            .findFirst()
            .orElseThrow();
    Map<String, List<String>> rows = new TreeMap<>();
    page.select("tbody tr")
        .forEach(row -> rows.put(row.select("th").text(), row.select("td").eachText()));
    return rows;
  }

  private static String text(OutputFile file) {
    return new String(file.bytes(), java.nio.charset.StandardCharsets.UTF_8);
  }
}
