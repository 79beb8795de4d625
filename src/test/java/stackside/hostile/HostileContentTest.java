package stackside.hostile;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Broken and hostile content goes through all that {@code check} does, in processes with as little
 * heap as a small machine gives: never an exception, a hang or a message that is none. {@code
 * -Dstackside.inputs=N} tries N times a thousand of the inputs that are made by chance.
 */
final class HostileContentTest {
  private static final int THOUSANDS = Integer.getInteger("stackside.inputs", 10);
  private static final int PROCESSES = 2;

  /** A quarter of 2 GiB, which the virtual machine takes where nobody says how much. */
  private static final String HEAP = "-Xmx512m";

  /** Half the usual stack, so that what passes here has room to spare. */
  private static final String STACK = "-Xss512k";

  @Test
  void nothingButProblemsComesOfIt(@TempDir Path folder) throws Exception {
    long start = System.nanoTime();
    List<Process> processes = new ArrayList<>();
    for (int i = 0; i < PROCESSES; i++) {
      processes.add(run(folder, i));
    }
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < PROCESSES; i++) {
      boolean ended = processes.get(i).waitFor(20L + THOUSANDS, TimeUnit.MINUTES);
      processes.get(i).destroyForcibly();
      List<String> printed = Files.readAllLines(printed(folder, i), UTF_8);
      assertThat(ended).as("%s", printed).isTrue();
      assertThat(processes.get(i).exitValue()).as(String.join("\n", printed)).isZero();
      lines.addAll(printed);
    }
    assertThat(lines).noneMatch(line -> line.startsWith("FOUND "));
    int inputs = sum(lines, "COUNT ");
    System.out.printf(
        "hostile content: %,d inputs, %d drafted, 0 exceptions, 0 hangs, %s, %d s%n",
        inputs, sum(lines, "DRAFTS"), HEAP, (System.nanoTime() - start) / 1_000_000_000);
    lines.stream().filter(line -> line.matches("(SPENT|SLOWEST).*")).forEach(System.out::println);
    assertThat(inputs).isGreaterThanOrEqualTo(1_000 * THOUSANDS);
    assertThat(sum(lines, "DRAFTS")).isGreaterThan(5 * THOUSANDS);
  }

  private static Process run(Path folder, int number) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            HEAP,
            STACK,
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-Djava.awt.headless=true",
            "-cp",
            System.getProperty("java.class.path"),
            HostileRun.class.getName(),
            Files.createDirectory(folder.resolve("content-" + number)).toString(),
            String.valueOf(number),
            String.valueOf(PROCESSES),
            String.valueOf(THOUSANDS))
        .redirectErrorStream(true)
        .redirectOutput(printed(folder, number).toFile())
        .start();
  }

  private static Path printed(Path folder, int number) {
    return folder.resolve("printed-" + number + ".txt");
  }

  private static int sum(List<String> lines, String start) {
    try (Stream<String> counts = lines.stream().filter(line -> line.startsWith(start))) {
      return counts.mapToInt(line -> Integer.parseInt(line.replaceFirst(".*=", ""))).sum();
    }
  }
}
