package stackside.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import stackside.derive.signed.Fingerprint;
import stackside.derive.signed.Json;
import stackside.derive.signed.JsonReader;

/**
 * Runs the finished jar as a unit runs it, from folders with a space and a letter beyond ASCII in
 * their paths.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class CommandLineIT {

  private Path base;
  private Path folder;

  private record Ended(int code, String out, String err) {}

  @BeforeAll
  void copyTheDemonstration(@TempDir Path given) throws IOException {
    base = given;
    folder = Files.createDirectory(base.resolve("hôpital nord"));
    Office.copy(Path.of("content"), folder.resolve("content"));
  }

  private static Ended run(Path workingFolder, List<String> options, String... arguments)
      throws Exception {
    List<String> line = new ArrayList<>();
    line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    line.addAll(options);
    line.addAll(List.of("-XX:TieredStopAtLevel=1", "-jar", System.getProperty("stackside.jar")));
    line.addAll(List.of(arguments));
    Path out = Files.createTempFile("out", ".txt");
    Path err = Files.createTempFile("err", ".txt");
    Process process =
        new ProcessBuilder(line)
            .directory(workingFolder.toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    process.getOutputStream().close();
    int code = process.waitFor();
    Ended ended = new Ended(code, Files.readString(out, UTF_8), Files.readString(err, UTF_8));
    Files.delete(out);
    Files.delete(err);
    return ended;
  }

  private Ended run(String... arguments) throws Exception {
    return run(folder, List.of(), arguments);
  }

  @Test
  void demonstrationIsDraftedFromAnyFolder() throws Exception {
    Ended ended = run("draft", "--on", "2026-11-25");
    assertThat(ended.code()).as(ended.err()).isIn(0, 4);
    assertThat(ended.out())
        .contains("no errors", "open " + Path.of("target", "draft", "index.html"))
        .doesNotContain("\u001b");
    assertThat(folder.resolve("target/draft/index.html")).isRegularFile();
    assertThat(folder.resolve("target/draft/cards")).isNotEmptyDirectory();
  }

  @Test
  void helpIsZero() throws Exception {
    Ended ended = run("--help");
    assertThat(ended.code()).isZero();
    assertThat(ended.out()).startsWith("Usage: stackside");
    assertThat(run("--version").out()).matches("Stackside \\d+\\.\\d+\\.\\d+\\n");
  }

  @Test
  void errorsInTheContentAreOne() throws Exception {
    assertThat(run("start", "neue Einheit é").code()).isZero();
    Ended ended = run("check", "neue Einheit é", "--format", "json");
    assertThat(ended.code()).isEqualTo(1);
    assertThat(ended.err()).isEmpty();
    Json.Members json = (Json.Members) JsonReader.read(ended.out());
    assertThat(json.values()).containsEntry("exit", Json.number(1)).containsKey("problems");
  }

  @Test
  void wrongUsageIsTwo() throws Exception {
    assertThat(run("chekc").code()).isEqualTo(2);
    Ended foreign = run("draft", "--out", ".");
    assertThat(foreign.code()).isEqualTo(2);
    assertThat(foreign.err()).startsWith("stackside: ").hasLineCount(1);
  }

  @Test
  void diskThatRefusesIsThree() throws Exception {
    Ended ended = run("draft", "--out", "/proc/stackside");
    assertThat(ended.code()).isEqualTo(3);
    assertThat(ended.err())
        .startsWith("stackside: cannot write to /proc/stackside: ")
        .hasLineCount(1);
  }

  @Test
  void sameBytesEverywhere() throws Exception {
    Path elsewhere = Files.createDirectory(base.resolve("elsewhere"));
    Office.copy(Path.of("content"), elsewhere.resolve("other content"));
    run(folder, List.of(), "draft", "--on", "2026-11-25", "--out", "first");
    run(
        elsewhere,
        List.of("-Duser.language=tr", "-Duser.country=TR", "-Duser.timezone=Pacific/Kiritimati"),
        "draft",
        "other content",
        "--on",
        "2026-11-25",
        "--out",
        "second");
    run(
        elsewhere,
        List.of("-Dfile.encoding=ISO-8859-1", "-Duser.language=ar", "-Duser.timezone=Etc/GMT+12"),
        "draft",
        "other content",
        "--on",
        "2026-11-25",
        "--out",
        "third");
    SortedMap<String, Fingerprint> first = files(folder.resolve("first"));
    assertThat(first).hasSizeGreaterThan(100);
    assertThat(files(elsewhere.resolve("second"))).isEqualTo(first);
    assertThat(files(elsewhere.resolve("third"))).isEqualTo(first);
  }

  private static SortedMap<String, Fingerprint> files(Path root) throws IOException {
    SortedMap<String, Fingerprint> files = new TreeMap<>();
    try (Stream<Path> walk = Files.walk(root)) {
      for (Path file : walk.filter(Files::isRegularFile).toList()) {
        files.put(root.relativize(file).toString(), Fingerprint.of(Files.readAllBytes(file)));
      }
    }
    return files;
  }

  @Test
  void messagesAreUtf8WhateverTheLocale() throws Exception {
    Files.createDirectories(base.resolve("wrong/content"));
    Files.writeString(base.resolve("wrong/content/unit.yaml"), "näme: é\n");
    Ended ended =
        run(
            base.resolve("wrong"),
            List.of("-Dfile.encoding=US-ASCII", "-Duser.language=tr"),
            "check");
    assertThat(ended.code()).isEqualTo(1);
    assertThat(ended.err()).contains("näme").contains("| näme: é");
  }
}
