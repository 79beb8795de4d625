package stackside.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Runs the launcher that stands beside the jar, from a folder with a space in its path. */
final class LauncherIT {
  private Path program;
  private Path unit;

  private record Ended(int code, String told) {}

  @BeforeEach
  void putTheProgramSomewhere(@TempDir Path base) throws IOException {
    assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "there is no POSIX shell");
    Path jar = Path.of(System.getProperty("stackside.jar"));
    program = Files.createDirectory(base.resolve("the program"));
    unit = Files.createDirectory(base.resolve("the unit"));
    for (String file : List.of("stackside", "stackside.jar")) {
      Files.copy(
          jar.resolveSibling(file), program.resolve(file), StandardCopyOption.COPY_ATTRIBUTES);
    }
    Office.copy(Path.of("src/test/resources/units/cholla"), unit.resolve("content"));
  }

  private Ended run(String... arguments) throws Exception {
    List<String> line = new ArrayList<>(List.of(program.resolve("stackside").toString()));
    line.addAll(List.of(arguments));
    Process process =
        new ProcessBuilder(line).directory(unit.toFile()).redirectErrorStream(true).start();
    process.getOutputStream().close();
    String told = new String(process.getInputStream().readAllBytes(), UTF_8);
    return new Ended(process.waitFor(), told);
  }

  @Test
  void firstDraftLeavesAnArchiveOfClasses_andLaterRunsUseIt() throws Exception {
    Ended first = run("draft", "--on", "2026-03-01");
    assertThat(first.told()).contains("files in target/draft").doesNotContain("[warning]", "[cds");
    assertThat(names(program))
        .containsExactlyInAnyOrder("stackside", "stackside.jar", "stackside.jsa");
    Ended again = run("draft", "--on", "2026-03-01");
    assertThat(again.code()).as(again.told()).isEqualTo(first.code());
    assertThat(again.told()).isEqualTo(first.told().replaceFirst("\\d+ changed", "none changed"));
    assertThat(run("--version").told()).matches("Stackside \\d+\\.\\d+\\.\\d+\n");
  }

  @Test
  void exitStatusIsThatOfTheProgram() throws Exception {
    assertThat(run("check", "nowhere").code()).isEqualTo(2);
    Files.writeString(unit.resolve("content/unit.yaml"), "name: [");
    Ended ended = run("draft");
    assertThat(ended.code()).as(ended.told()).isEqualTo(1);
    assertThat(run("check").code()).isEqualTo(1);
  }

  @Test
  void archiveThatDoesNotFitIsLeftAside() throws Exception {
    Files.writeString(program.resolve("stackside.jsa"), "of another time");
    Ended ended = run("check", "--on", "2026-03-01");
    assertThat(ended.told()).contains("errors").doesNotContain("[warning]", "archive");
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).toList();
    }
  }
}
