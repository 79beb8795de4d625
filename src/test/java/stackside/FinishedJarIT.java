package stackside;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** What the finished jar holds besides the program: how it starts, and other people's licences. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class FinishedJarIT {

  private static final String INDEX = "META-INF/licences/THIRD-PARTY.md";
  private static final Pattern VERSIONED = Pattern.compile("^META-INF/versions/\\d+/");
  private static final Pattern QUOTED = Pattern.compile("`([^`]+)`");

  private JarFile jar;

  @BeforeAll
  void open() throws IOException {
    jar = new JarFile(System.getProperty("stackside.jar"));
  }

  @AfterAll
  void close() throws IOException {
    jar.close();
  }

  @Test
  void startsAtTheCommandLineAndUsesNewerClasses() throws IOException {
    Attributes manifest = jar.getManifest().getMainAttributes();
    assertThat(manifest.getValue(Attributes.Name.MAIN_CLASS)).isEqualTo("stackside.cli.Main");
    assertThat(manifest.getValue(Attributes.Name.MULTI_RELEASE)).isEqualTo("true");
    assertThat(jar.stream())
        .anyMatch(e -> e.getName().startsWith("META-INF/versions/16/freemarker/"));
  }

  @Test
  void ownLicenceIsTheOneOfTheRepository() throws IOException {
    assertThat(text("META-INF/LICENSE")).isEqualTo(Files.readString(Path.of("LICENSE")));
  }

  @Test
  void everyLicenceTextThatTheIndexNamesIsThere() throws IOException {
    List<String> named =
        rows().map(row -> row[4]).flatMap(FinishedJarIT::quoted).distinct().toList();
    assertThat(named).hasSizeGreaterThan(5);
    for (String name : named) {
      assertThat(text(name)).as(name).hasSizeGreaterThan(400);
    }
  }

  @Test
  void everyForeignClassAndFontIsInTheIndex() throws IOException {
    List<String> places = rows().map(row -> row[2]).flatMap(FinishedJarIT::quoted).toList();
    assertThat(jar.stream().map(JarEntry::getName))
        .filteredOn(name -> name.matches(".*\\.(class|ttf|otf|pfb|woff2?|icc)"))
        .map(name -> VERSIONED.matcher(name).replaceFirst(""))
        .filteredOn(name -> !name.matches("stackside/.*\\.class"))
        .allSatisfy(name -> assertThat(places).anyMatch(name::startsWith));
  }

  @Test
  void nothingOfASignatureIsLeft() {
    assertThat(jar.stream().map(JarEntry::getName))
        .noneMatch(name -> name.matches("META-INF/.*\\.(SF|RSA|DSA)"));
  }

  /** The cells of the index's table, without its two header rows. */
  private Stream<String[]> rows() throws IOException {
    return text(INDEX).lines().filter(l -> l.startsWith("|")).skip(2).map(l -> l.split("\\|", -1));
  }

  private static Stream<String> quoted(String cell) {
    return QUOTED.matcher(cell).results().map(match -> match.group(1));
  }

  private String text(String name) throws IOException {
    JarEntry entry = jar.getJarEntry(name);
    assertThat(entry).as(name).isNotNull();
    try (InputStream in = jar.getInputStream(entry)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
