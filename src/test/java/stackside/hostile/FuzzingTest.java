package stackside.hostile;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Runs a coverage-guided fuzzer on each target, in a separate process, for a limited number of
 * runs. {@code -Dfuzz.seconds=600} fuzzes for that long instead; {@code -Dfuzz.target=yaml} uses
 * one target only. What it learns and finds is kept under {@code target/fuzz}. A finding, without
 * its first byte, goes to {@code src/test/resources/hostile}, and stays there.
 */
@Tag("thorough")
final class FuzzingTest {
  private static final Path FOLDER = Path.of("target/fuzz").toAbsolutePath();
  private static final int SECONDS = Integer.getInteger("fuzz.seconds", 0);
  private static final String ONLY = System.getProperty("fuzz.target", "");
  private static final Pattern DONE =
      Pattern.compile("(?m)^Done (\\d+) runs|stat::number_of_executed_units: (\\d+)");

  @ParameterizedTest
  @EnumSource
  void nothingIsFound(FuzzTarget target) throws Exception {
    assumeTrue(ONLY.isEmpty() || target.name().equals(ONLY.toUpperCase(Locale.ROOT)));
    Path folder = FOLDER.resolve(target.name().toLowerCase(Locale.ROOT));
    delete(folder.resolve("content"));
    Files.createDirectories(folder.resolve("learnt"));
    Path seeds = Files.createDirectories(folder.resolve("seeds"));
    List<byte[]> given = target.seeds();
    for (int i = 0; i < given.size(); i++) {
      Files.write(seeds.resolve("seed-" + i), given.get(i));
    }
    long start = System.nanoTime();
    Path printed = folder.resolve("printed.txt");
    Process process =
        new ProcessBuilder(command(target, folder))
            .redirectErrorStream(true)
            .redirectOutput(printed.toFile())
            .start();
    boolean ended = process.waitFor(300L + SECONDS * 2L, TimeUnit.SECONDS);
    process.destroyForcibly();
    String told = Files.readString(printed, UTF_8);
    assertThat(ended).as(told).isTrue();
    assertThat(process.exitValue()).as(told).isZero();
    System.out.printf(
        "fuzzing %s: %,d inputs, 0 findings, %d s%n",
        target, runs(told), (System.nanoTime() - start) / 1_000_000_000);
    assertThat(runs(told)).isGreaterThanOrEqualTo(200);
  }

  private static List<String> command(FuzzTarget target, Path folder) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Xmx512m", "-XX:+UseSerialGC", "-Djava.awt.headless=true"));
    command.addAll(List.of("-cp", classPath(), "com.code_intelligence.jazzer.Jazzer"));
    command.add("--target_class=" + Fuzz.class.getName());
    command.add("--target_args=" + target + " " + folder.resolve("content"));
    command.add(
        "--instrumentation_includes=stackside.**:org.yaml.snakeyaml.**:com.vladsch.flexmark.**:"
            + "de.siegmar.fastcsv.**");
    command.add("--reproducer_path=" + folder);
    command.add("-seed=1");
    command.add("-len_control=0");
    command.add("-timeout=30");
    command.add("-rss_limit_mb=0");
    command.add("-print_final_stats=1");
    command.add("-artifact_prefix=" + folder + "/");
    command.add(SECONDS > 0 ? "-max_total_time=" + SECONDS : "-runs=" + runs(target));
    command.add(folder.resolve("learnt").toString());
    command.add(folder.resolve("seeds").toString());
    return command;
  }

  private static int runs(FuzzTarget target) {
    return switch (target) {
      case YAML -> 2_000;
      case CSV, MARKDOWN -> 1_500;
      case QUANTITY -> 100_000;
      case UNIT -> 200;
    };
  }

  private static String classPath() {
    return Stream.of(System.getProperty("java.class.path").split(":", -1))
        .map(entry -> Path.of(entry).toAbsolutePath().toString())
        .reduce((one, two) -> one + ":" + two)
        .orElseThrow();
  }

  private static int runs(String told) {
    int most = 0;
    Matcher done = DONE.matcher(told);
    while (done.find()) {
      most =
          Math.max(most, Integer.parseInt(done.group(1) == null ? done.group(2) : done.group(1)));
    }
    return most;
  }

  private static void delete(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> walk = Files.walk(folder)) {
        for (Path path : walk.sorted(java.util.Comparator.reverseOrder()).toList()) {
          Files.delete(path);
        }
      }
    }
  }
}
