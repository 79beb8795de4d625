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
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Runs broken and hostile content through everything that {@code check} does, in processes with as
 * little heap as a small machine gives. There must never be an exception, a hang or a meaningless
 * message. {@code -Dstackside.inputs=N} tries N thousand of the random inputs.
 */
@Tag("thorough")
final class HostileContentTest {
  private static final int THOUSANDS = Integer.getInteger("stackside.inputs", 10);

  /** How many processes share the inputs. */
  private static final int PROCESSES = 2;

  /** A quarter of 2 GiB, the virtual machine's default if nobody specifies the heap. */
  private static final String HEAP = "-Xmx512m";

  /** Half the usual stack, so that whatever passes here has space to spare. */
  private static final String STACK = "-Xss512k";

  @Test
  void nothingButProblemsComesOfIt(@TempDir Path folder) throws Exception {
    List<String> lines = printed(folder);
    assertThat(sum(lines, "COUNT ")).isGreaterThanOrEqualTo(1_000 * THOUSANDS);
    assertThat(sum(lines, "DRAFTS")).isGreaterThan(5 * THOUSANDS);
  }

  /** What the processes print, each with its share of the inputs. */
  private static List<String> printed(Path folder) throws Exception {
    long start = System.nanoTime();
    List<Process> running = new ArrayList<>();
    for (int i = 0; i < PROCESSES; i++) {
      running.add(run(folder, i));
    }
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < PROCESSES; i++) {
      boolean ended = running.get(i).waitFor(20L + THOUSANDS, TimeUnit.MINUTES);
      running.get(i).destroyForcibly();
      List<String> printed = Files.readAllLines(printed(folder, i), UTF_8);
      assertThat(ended).as("%s", printed).isTrue();
      assertThat(running.get(i).exitValue()).as(String.join("\n", printed)).isZero();
      lines.addAll(printed);
    }
    assertThat(lines).noneMatch(line -> line.startsWith("FOUND "));
    System.out.printf(
        "hostile content: %,d inputs, %d drafted, 0 exceptions, 0 hangs, %s, %d s%n",
        sum(lines, "COUNT "),
        sum(lines, "DRAFTS"),
        HEAP,
        (System.nanoTime() - start) / 1_000_000_000);
    lines.stream().filter(line -> line.matches("(SPENT|SLOWEST).*")).forEach(System.out::println);
    return lines;
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
