package stackside.render.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A system program that checks cards independently of us. If it is missing, the test is skipped on
 * a developer's machine and fails in continuous integration.
 */
public final class Tool {

  private final String name;

  private Tool(String name) {
    this.name = name;
  }

  public static Tool named(String name) {
    boolean there =
        Arrays.stream(Optional.ofNullable(System.getenv("PATH")).orElse("").split(":", -1))
            .anyMatch(folder -> Files.isExecutable(Path.of(folder, name)));
    if ("true".equals(System.getenv("CI"))) {
      assertThat(there).as("%s is installed", name).isTrue();
    }
    assumeTrue(there, name + " is not installed");
    return new Tool(name);
  }

  /** Runs it and returns what it prints. */
  public String run(Path folder, String... arguments) {
    try {
      List<String> command = new ArrayList<>(List.of(name));
      command.addAll(List.of(arguments));
      Path out = Files.createTempFile(folder, "out", ".txt");
      Process process =
          new ProcessBuilder(command)
              .directory(folder.toFile())
              .redirectErrorStream(true)
              .redirectOutput(out.toFile())
              .start();
      int code = process.waitFor();
      String printed = Files.readString(out, StandardCharsets.UTF_8);
      assertThat(code).as("%s: %s", command, printed).isZero();
      return printed;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError(e);
    }
  }
}
