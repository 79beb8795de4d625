package stackside.render.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import stackside.Units;
import stackside.derive.Edited;
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

  private static String page(String path, String templates) {
    Publication publication = DemonstrationSite.publication(Edited.base(templates), Marking.DRAFT);
    return text(SiteRenderer.render(publication, List.of()), path);
  }

  @Test
  void aUnitsOwnTemplateReplacesOneOfTheProgrammes() {
    assertThat(
            page(
                "assets/stackside.css",
                "=== templates/assets/stackside.css\n+body { color: black }\n"))
        .startsWith("body { color: black }");
  }

  @Test
  void aMessageFileOfTheUnitsLanguageIsTaken() {
    assertThat(page("rooms.html", "=== templates/words/en-GB.txt\n+menu.start = Home\n"))
        .contains(">Home</a>", ">Find an answer</a>");
  }

  static String text(List<OutputFile> files, String path) {
    return files.stream()
        .filter(file -> file.path().equals(path))
        .map(file -> new String(file.bytes(), java.nio.charset.StandardCharsets.UTF_8))
        .findFirst()
        .orElseThrow();
  }
}
