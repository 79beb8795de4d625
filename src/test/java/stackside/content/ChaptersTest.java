package stackside.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stackside.Units;
import stackside.model.HandbookPage;
import stackside.model.Unit;

/** A unit takes a chapter of the program over, changes it or leaves it out, by one file. */
final class ChaptersTest {
  @TempDir private Path folder;

  private Unit unit(String... files) throws IOException {
    Path from = Units.folder("base");
    try (var walk = Files.walk(from)) {
      for (Path file : walk.filter(Files::isRegularFile).toList()) {
        Path to = folder.resolve(from.relativize(file).toString());
        Files.createDirectories(to.getParent());
        Files.copy(file, to);
      }
    }
    for (int i = 0; i < files.length; i += 2) {
      Path to = folder.resolve(files[i]);
      Files.createDirectories(to.getParent());
      Files.writeString(to, files[i + 1]);
    }
    Reading reading = Units.reading(folder);
    assertThat(reading.problems()).as(Units.printed(reading)).isEmpty();
    return reading.unit().orElseThrow();
  }

  private static HandbookPage page(Unit unit, String id) {
    return unit.handbook().stream()
        .filter(each -> each.id().slug().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void eachChapterIsThere_withItsTitle() {
    assertThat(Chapters.names()).hasSizeGreaterThan(10).doesNotHaveDuplicates();
    assertThat(Chapters.names())
        .allSatisfy(name -> assertThat(Chapters.text(name).orElseThrow()).startsWith("# "));
    assertThat(Chapters.text("no-such-chapter")).isEmpty();
  }

  @Test
  void withoutAFile_itIsLeftOut() throws IOException {
    assertThat(unit().handbook()).noneMatch(HandbookPage::isChapter);
  }

  @Test
  void anEmptyFile_takesItOverWithoutRemarks() throws IOException {
    HandbookPage argon = page(unit("chapters/argon.md", ""), "argon");
    assertThat(argon.isChapter()).isTrue();
    assertThat(argon.title()).isEqualTo("Argon");
    assertThat(argon.remarks().orElseThrow().blocks()).isEmpty();
    assertThat(argon.borrowed()).isNotEmpty();
  }

  @Test
  void whatStandsInTheFile_isTheUnitsRemark() throws IOException {
    HandbookPage argon = page(unit("chapters/argon.md", "We have none.\n"), "argon");
    assertThat(argon.remarks().orElseThrow().plain()).isEqualTo("We have none.");
    assertThat(argon.text().plain()).doesNotContain("We have none.");
  }

  @Test
  void aPageOfItsOwn_standsInPlaceOfTheChapterAndMayCiteTheProgramsSources() throws IOException {
    String changed = Chapters.text("argon").orElseThrow().replace("# Argon", "# Our argon");
    Unit unit =
        unit(
            "handbook/argon.md",
            changed,
            "chapters/site-and-wall.md",
            "",
            "chapters/bowel-gas.md",
            "");
    HandbookPage argon = page(unit, "argon");
    assertThat(argon.isChapter()).isFalse();
    assertThat(argon.title()).isEqualTo("Our argon");
    assertThat(argon.borrowed())
        .extracting(each -> each.id().slug())
        .contains("norton-2002", "ladas-2007");
  }

  @Test
  void chaptersComeInTheOrderOfTheProgram() throws IOException {
    Unit unit = unit("chapters/argon.md", "", "chapters/waveforms.md", "", "chapters/fire.md", "");
    assertThat(unit.handbook())
        .filteredOn(HandbookPage::isChapter)
        .extracting(page -> page.id().slug())
        .isEqualTo(List.of("waveforms", "argon", "fire"));
  }

  @Test
  void aPublicationThatTheUnitDescribesToo_isNotBorrowed() throws IOException {
    String own = Files.readString(Units.folder("base").resolve("sources.yaml"));
    Unit unit =
        unit(
            "chapters/argon.md",
            "",
            "sources.yaml",
            own + "- {id: ladas-2007, by: Ladas, title: Ours, year: 2007, basis: recalled}\n");
    assertThat(page(unit, "argon").borrowed())
        .extracting(each -> each.id().slug())
        .doesNotContain("ladas-2007")
        .contains("norton-2002");
    assertThat(unit.citations()).extracting(each -> each.id().slug()).contains("ladas-2007");
  }
}
