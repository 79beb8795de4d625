package stackside.render.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stackside.Units;
import stackside.content.Reading;
import stackside.model.Broken;
import stackside.model.Unit;
import stackside.render.Links;
import stackside.render.Marking;
import stackside.render.OutputFile;

/** Pages of units that lack nearly everything, have everything, or are partly broken. */
final class OtherUnitsTest {
  @TempDir private Path temporary;

  @ParameterizedTest
  @ValueSource(strings = {"bare", "base", "whole"})
  void everyLinkOfAnyUnitLeadsSomewhere(String name) {
    List<OutputFile> files = DemonstrationSite.render(Units.read(name), Marking.DRAFT);
    assertThat(SiteStructureTest.brokenLinks(files)).isEmpty();
  }

  @Test
  void brokenThingsHaveStubPagesThatSayWhatIsWrong() throws IOException {
    Unit unit = withAMisspeltInstrument();
    List<OutputFile> files = DemonstrationSite.render(unit, Marking.DRAFT);
    assertThat(SiteStructureTest.brokenLinks(files)).isEmpty();
    List<Broken> withPages =
        unit.broken().stream().filter(each -> Links.to(each.id()).anchor().isEmpty()).toList();
    assertThat(withPages).isNotEmpty();
    for (Broken broken : withPages) {
      Document page = Jsoup.parse(SiteRendererTest.text(files, Links.to(broken.id()).page()), "");
      assertThat(page.select(".box").text()).contains(broken.at().file());
      assertThat(page.select("a[href$=problems.html]")).isNotEmpty();
    }
  }

  private Unit withAMisspeltInstrument() throws IOException {
    Path from = Units.folder("base");
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path to = temporary.resolve(from.relativize(file).toString());
        Files.createDirectories(to.getParent());
        Files.writeString(
            to, Files.readString(file).replace("instrument: snare", "instrument: snair"));
      }
    }
    Reading reading = Units.reading(temporary);
    assertThat(reading.problems()).isNotEmpty();
    return reading.unit().orElseThrow();
  }
}
