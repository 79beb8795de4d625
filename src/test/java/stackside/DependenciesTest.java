package stackside;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;

/** Libraries and plugins are pinned, and each has its licence named. */
final class DependenciesTest {
  private static final Pattern PINNED = Pattern.compile("\\d+(\\.\\d+)*");
  private static final Pattern PROPERTY = Pattern.compile("\\$\\{(.+)}");
  private static final Path IN_JAR = Path.of("src/main/resources/META-INF/licences/THIRD-PARTY.md");

  private final Document pom;

  DependenciesTest() throws IOException {
    pom = Jsoup.parse(Files.readString(Path.of("pom.xml")), "", Parser.xmlParser());
  }

  @Test
  void everyVersionIsPinned() {
    List<Element> used =
        pom.select("dependency, plugin, annotationProcessorPaths > path, artifactItem");
    assertThat(used).hasSizeGreaterThan(40);
    for (Element each : used) {
      if (!isManagedElsewhere(each)) {
        assertThat(version(each)).as(name(each)).matches(PINNED);
      }
    }
  }

  /** JUnit's versions come from its own list; a plugin's from where it stands first. */
  private boolean isManagedElsewhere(Element each) {
    boolean without = child(each, "version").isEmpty();
    boolean elsewhere =
        pom.select(each.tagName()).stream()
            .anyMatch(
                other -> name(other).equals(name(each)) && child(other, "version").isPresent());
    return without && (elsewhere || name(each).startsWith("junit-"));
  }

  private String version(Element each) {
    String written = child(each, "version").orElse("none");
    Matcher property = PROPERTY.matcher(written);
    return property.matches()
        ? pom.select("properties > *").stream()
            .filter(value -> value.tagName().equals(property.group(1)))
            .findFirst()
            .map(Element::text)
            .orElse("none")
        : written;
  }

  @Test
  void everyLibraryHasItsLicenceNamed() throws IOException {
    String ofTests = Files.readString(Path.of("DEVELOPERS.md"));
    String ofJar = Files.readString(IN_JAR).toLowerCase(java.util.Locale.ROOT);
    for (Element each : pom.select("project > dependencies > dependency")) {
      String name = name(each);
      if (child(each, "scope").orElse("").equals("test")) {
        assertThat(ofTests).containsPattern("(?m)^\\| " + name + "\\b.* \\| [A-Z]");
      } else {
        assertThat(ofJar).as(name).contains(library(name));
      }
    }
  }

  private static String library(String name) {
    return name.equals("core") ? "zxing core" : name.replaceFirst("-.*", "");
  }

  private static String name(Element each) {
    return child(each, "artifactId").orElseThrow();
  }

  private static Optional<String> child(Element each, String tag) {
    return each.children().stream()
        .filter(child -> child.tagName().equals(tag))
        .findFirst()
        .map(Element::text);
  }
}
