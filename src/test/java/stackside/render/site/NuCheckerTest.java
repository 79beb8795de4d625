package stackside.render.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every page of the demonstration through the Nu HTML Checker, run as a process of its own. The
 * build puts it into {@code target/tools}.
 */
final class NuCheckerTest {
  private static final Path TOOLS = Path.of("target/tools").toAbsolutePath();

  @Test
  void noPageHasAnError(@TempDir Path temporary) throws IOException, InterruptedException {
    assertThat(TOOLS).as("put there by mvn dependency:copy@checker").isDirectory();
    Path folder = Browser.write(temporary, DemonstrationSite.pages());
    Path report = temporary.resolve("report.txt");
    Process checker =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xss4m",
                "-cp",
                TOOLS + File.separator + "*",
                "nu.validator.client.SimpleCommandLineValidator",
                "--errors-only",
                "--skip-non-html",
                // It does not accept a file on disk for 'self'; the browser test checks the policy.
                "--filterpattern",
                "(?s).*Content Security Policy \\(meta tag\\).*blocked by.*",
                folder.toString())
            .redirectErrorStream(true)
            .redirectOutput(report.toFile())
            .start();
    assertThat(checker.waitFor()).as(Files.readString(report, StandardCharsets.UTF_8)).isZero();
    assertThat(List.of(Files.readString(report, StandardCharsets.UTF_8).split("\n", -1)))
        .allSatisfy(line -> assertThat(line).isBlank());
  }
}
