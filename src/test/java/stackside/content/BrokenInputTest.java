package stackside.content;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stackside.Units;
import stackside.source.Problem;

/**
 * Throws broken YAML, CSV and Markdown at the reader: never an exception, never a hang, and every
 * problem has a place that exists and words in the agreed form. {@code -Dstackside.inputs=N} tries
 * more of them.
 */
final class BrokenInputTest {
  private static final int INPUTS = Integer.getInteger("stackside.inputs", 400);
  private static final Duration LONGEST = Duration.ofSeconds(10);
  private static final List<String> CRUMBS =
      List.of(
          "[",
          "]",
          "{",
          "}",
          ":",
          ": ",
          "- ",
          "\n",
          "\n  ",
          ",",
          "\"",
          "'",
          "|",
          ">",
          "&a ",
          "*a",
          "!!x ",
          "<<: ",
          "#",
          "? ",
          "%",
          "@",
          "`",
          "\t",
          "---\n",
          "...\n",
          "\u0000",
          "\uFEFF",
          "\u2028",
          "\\",
          "\"\\u00",
          "0",
          "012",
          "1e999",
          "-1",
          "99999999999",
          "~",
          "null",
          "yes",
          "no",
          "NaN",
          "<b>",
          "](",
          "[x](machine:",
          "![",
          "```",
          "> ",
          "|-",
          "a".repeat(300),
          "𝕊",
          "é",
          "\r",
          "\r\n",
          "FILL-IN");

  @Test
  void mutilatedFiles_bringProblemsOnly() throws IOException {
    Map<String, String> whole = files();
    for (int seed = 0; seed < INPUTS; seed++) {
      Random random = new Random(seed);
      Map<String, String> files = new TreeMap<>(whole);
      String victim = List.copyOf(files.keySet()).get(random.nextInt(files.size()));
      files.put(victim, mutilated(files.get(victim), random));
      survives("seed " + seed + " in " + victim, files);
    }
  }

  @Test
  void rubbish_bringsProblemsOnly() throws IOException {
    for (int seed = 0; seed < INPUTS; seed++) {
      Random random = new Random(seed);
      Map<String, String> files = new TreeMap<>();
      files.put("unit.yaml", Trial.unitFile());
      for (String name :
          List.of(
              "instruments.yaml",
              "machines/a.yaml",
              "profiles/a.yaml",
              "assets.csv",
              "handbook/a.md")) {
        files.put(name, rubbish(random));
      }
      survives("rubbish of seed " + seed, files);
    }
  }

  @ParameterizedTest(name = "{0} of {1}")
  @MethodSource("monsters")
  void monsters_areReadOrRefusedInTime(String name, String start, String text) throws IOException {
    Map<String, String> files = new TreeMap<>();
    files.put("unit.yaml", Trial.unitFile());
    files.put(name, text);
    survives(name + " " + start, files);
  }

  private static String start(String text) {
    return text.substring(0, 16).replace("\n", "\\n");
  }

  private static Stream<Object[]> monsters() {
    List<Object[]> monsters = new ArrayList<>();
    int much = 100_000;
    Stream.of(
            "[".repeat(much),
            "{".repeat(much),
            "- ".repeat(much),
            "? ".repeat(much),
            "a: ".repeat(much),
            "[a, ".repeat(much),
            "\"" + "a".repeat(much),
            "'" + "\n".repeat(much),
            "|\n" + " a\n".repeat(much),
            "- {id: a-" + "a-".repeat(much) + "}",
            "- {id: " + "a".repeat(much) + "}",
            "- {x: 1}\n".repeat(much / 50),
            "- {id: a, kind: " + "9".repeat(much) + "}",
            "#" + "x".repeat(much),
            "- !".repeat(much),
            "- &a\n".repeat(much / 10),
            "\\".repeat(much),
            " ".repeat(much) + "a",
            " ".repeat(much) + "a:\n b")
        .forEach(text -> monsters.add(new Object[] {"instruments.yaml", start(text), text}));
    Stream.of(
            "[".repeat(much),
            "![".repeat(much),
            "[a](".repeat(much),
            "*a ".repeat(much),
            "**a *b ".repeat(much / 4),
            "*".repeat(much),
            "_a_".repeat(much),
            "> ".repeat(much),
            "- ".repeat(much),
            "1. ".repeat(much),
            "`".repeat(much),
            "` `` ".repeat(much / 4),
            "<".repeat(much),
            "<a ".repeat(much / 4),
            "<!--".repeat(much / 4),
            "&".repeat(much),
            "|a".repeat(much) + "\n" + "|-".repeat(much),
            "| a | b |\n|---|---|\n" + "| a | b |\n".repeat(much / 10),
            "[a]: b\n".repeat(much / 10),
            "[a][b] ".repeat(much / 10),
            "[a](machine:b) ".repeat(much / 20),
            "- a\n".repeat(much / 4),
            "a\n".repeat(much / 2),
            "  - a\n    ".repeat(much / 100),
            Stream.iterate("", indent -> indent + " ")
                .limit(600)
                .map(indent -> indent + "- a\n")
                .reduce("", String::concat),
            "#".repeat(much))
        .forEach(
            text -> {
              monsters.add(new Object[] {"handbook/a.md", start(text), "# A\n\n" + text});
              monsters.add(new Object[] {"handbook/b.md", start(text), text});
            });
    Stream.of(
            "\"".repeat(much),
            ",".repeat(much),
            "a,b\n".repeat(much / 4),
            "asset,machine,software,status,since\n" + "a,b,c,d,e\n".repeat(much / 50),
            "asset,machine,software,status,since\n" + ",,,,\n".repeat(much / 5),
            "\n".repeat(much) + "asset")
        .forEach(text -> monsters.add(new Object[] {"assets.csv", start(text), text}));
    return monsters.stream();
  }

  private static void survives(String what, Map<String, String> files) throws IOException {
    try (FileSystem disk = Jimfs.newFileSystem(Configuration.unix())) {
      Path folder = disk.getPath("/unit");
      for (Map.Entry<String, String> file : files.entrySet()) {
        Path path = folder.resolve(file.getKey());
        Files.createDirectories(path.getParent());
        Files.write(path, file.getValue().getBytes(StandardCharsets.UTF_8));
      }
      List<Reading> reading = new ArrayList<>();
      assertThatCode(
              () ->
                  assertTimeoutPreemptively(LONGEST, () -> reading.add(ContentReader.read(folder))))
          .as(what)
          .doesNotThrowAnyException();
      reading.get(0).problems().forEach(problem -> isWellFormed(what, problem, reading.get(0)));
    }
  }

  private static void isWellFormed(String what, Problem problem, Reading reading) {
    assertThat(problem.message())
        .as(what)
        .doesNotContain("\n", "Exception")
        .doesNotEndWith(".")
        .hasSizeLessThan(260);
    assertThat(problem.help()).as(what + problem.message()).isPresent();
    String line =
        Optional.ofNullable(reading.sources().files().get(problem.at().file()))
            .map(file -> file.line(problem.at().line()))
            .orElse("");
    assertThat(problem.at().column() - 1 + problem.at().length())
        .as(what + ": " + problem.at() + " " + problem.message())
        .isLessThanOrEqualTo(Math.max(line.length(), problem.at().column()));
  }

  private static String mutilated(String text, Random random) {
    StringBuilder broken = new StringBuilder(text);
    int times = 1 + random.nextInt(4);
    for (int i = 0; i < times; i++) {
      int at = random.nextInt(broken.length() + 1);
      int end = Math.min(broken.length(), at + random.nextInt(12));
      switch (random.nextInt(5)) {
        case 0 -> broken.delete(at, end);
        case 1 -> broken.insert(at, broken.substring(at, end));
        case 2 -> broken.replace(at, end, crumb(random));
        case 3 -> broken.setLength(at);
        default -> broken.insert(at, crumb(random));
      }
    }
    return broken.toString();
  }

  private static String rubbish(Random random) {
    StringBuilder text = new StringBuilder();
    int pieces = random.nextInt(40);
    for (int i = 0; i < pieces; i++) {
      text.append(crumb(random));
      text.append(random.nextInt(3) == 0 ? "id: a" : "");
    }
    return text.toString();
  }

  private static String crumb(Random random) {
    return CRUMBS.get(random.nextInt(CRUMBS.size()));
  }

  private static Map<String, String> files() throws IOException {
    Path whole = Units.folder("whole");
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> paths = Files.walk(whole)) {
      for (Path path : paths.filter(Files::isRegularFile).toList()) {
        files.put(whole.relativize(path).toString().replace('\\', '/'), Files.readString(path));
      }
    }
    return files;
  }
}
