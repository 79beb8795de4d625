package stackside.render.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import stackside.Units;
import stackside.model.Unit;
import stackside.render.Marking;
import stackside.render.OutputFile;
import stackside.render.Publication;

/** The whole renderer: the same bytes every time, a unit's own templates, the marks. */
final class SiteRendererTest {

  @Test
  void aSecondRenderingInAnotherLocaleGivesTheSameBytes() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      assertThat(DemonstrationSite.render(Units.demonstration(), Marking.DRAFT))
          .isEqualTo(DemonstrationSite.files());
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void pathsAreUniqueAndSorted() {
    List<String> paths = DemonstrationSite.files().stream().map(OutputFile::path).toList();
    assertThat(paths).isSorted().doesNotHaveDuplicates();
  }

  @Test
  void anIssuedPageDoesNotSayDraft() {
    List<OutputFile> files = DemonstrationSite.render(Units.demonstration(), Marking.ISSUED);
    assertThat(text(files, "index.html")).doesNotContain("DRAFT").contains("DEMONSTRATION");
  }

  @Test
  void aUnitsOwnTemplateReplacesOneOfTheProgrammes() {
    Unit unit = Units.demonstration();
    Publication publication = DemonstrationSite.publication(unit, Marking.DRAFT);
    OwnTemplates own =
        new OwnTemplates(
            List.of(new OwnTemplates.Template("assets/stackside.css", "body { color: black }")));
    assertThat(text(SiteRenderer.render(publication, List.of(), own), "assets/stackside.css"))
        .isEqualTo("body { color: black }");
  }

  @Test
  void aMessageFileOfTheUnitsLanguageIsTaken() {
    Publication publication = DemonstrationSite.publication(Units.demonstration(), Marking.DRAFT);
    String english = new Templates(OwnTemplates.none()).text("words/en-GB.txt");
    OwnTemplates own =
        new OwnTemplates(
            List.of(
                new OwnTemplates.Template(
                    "words/en-GB.txt",
                    english.replace("menu.start = Start", "menu.start = Home"))));
    assertThat(text(SiteRenderer.render(publication, List.of(), own), "rooms.html"))
        .contains(">Home</a>");
  }

  @Test
  void aMisspeltNameInATemplateStopsTheRun() {
    Publication publication = DemonstrationSite.publication(Units.demonstration(), Marking.DRAFT);
    OwnTemplates own =
        new OwnTemplates(List.of(new OwnTemplates.Template("page.ftlh", "<p>${frame.titel}</p>")));
    assertThatThrownBy(() -> SiteRenderer.render(publication, List.of(), own))
        .isInstanceOf(BrokenTemplate.class)
        .hasMessageContaining("page.ftlh");
  }

  static String text(List<OutputFile> files, String path) {
    return files.stream()
        .filter(file -> file.path().equals(path))
        .map(file -> new String(file.bytes(), java.nio.charset.StandardCharsets.UTF_8))
        .findFirst()
        .orElseThrow();
  }
}
