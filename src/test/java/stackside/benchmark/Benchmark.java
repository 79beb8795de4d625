package stackside.benchmark;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.generate.GeneratedUnit;

/**
 * Measures, side by side and each in processes of their own, what a draft costs, and prints one
 * table. Processor seconds (user and system) decide, for wall time depends on the neighbours.
 */
public final class Benchmark {
  private static final String DAY = "2026-11-25";
  private static final int RUNS = 5;
  private static final List<String> QUICK =
      List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto", "-Xlog:disable");
  private static final List<String> LARGE = List.of("-Xmx1g");

  private final Path folder;
  private final String jars;

  private Benchmark(Path target) throws IOException {
    this.folder = Files.createDirectories(target.resolve("benchmark")).toRealPath();
    this.jars =
        Stream.concat(
                Stream.of("stackside.jar", "stackside-tests.jar")
                    .map(name -> target.toAbsolutePath().resolve(name).toString()),
                Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                    .filter(entry -> entry.endsWith(".jar")))
            .collect(Collectors.joining(File.pathSeparator));
  }

  /** One run of a process. */
  private record Run(double wall, double cpu, String out) {}

  /** Several runs: the least and the middle one decide. */
  private record Runs(List<Run> all) {
    double least() {
      return all.stream().mapToDouble(Run::cpu).min().orElseThrow();
    }

    double middle() {
      double[] sorted = all.stream().mapToDouble(Run::cpu).sorted().toArray();
      return sorted[sorted.length / 2];
    }

    double wall() {
      return all.stream().mapToDouble(Run::wall).min().orElseThrow();
    }

    String text() {
      return "%.2f / %.2f s (wall %.2f s)".formatted(least(), middle(), wall());
    }
  }

  /** {@code Benchmark FOLDER [most times]}: the folder holds the jars; it writes there too. */
  public static void main(String[] arguments) throws Exception {
    int most = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 100;
    new Benchmark(Path.of(arguments[0])).print(most);
  }

  private void print(int most) throws Exception {
    System.out.printf(
        "%d cores, %d GiB of memory; processor seconds least / middle of %d runs%n",
        Runtime.getRuntime().availableProcessors(),
        ((com.sun.management.OperatingSystemMXBean)
                    java.lang.management.ManagementFactory.getOperatingSystemMXBean())
                .getTotalMemorySize()
            >> 30,
        RUNS);
    prepare();
    System.out.println("Classes from the jars:");
    demonstration(QUICK, QUICK);
    System.out.println("Classes from archives, as the launcher starts it, for both programs:");
    demonstration(
        archived("draft", "stackside.cli.Main", draft(fresh("draft"))),
        archived("bare", "stackside.cli.BareProgram", bare(fresh("bare"))));
    if (most > 1) {
      scale(most);
    }
  }

  private void prepare() throws Exception {
    java(QUICK, "stackside.cli.BareProgram", "content", fresh("values").toString(), DAY);
    Path draft = fresh("draft");
    Path bare = fresh("bare");
    java(QUICK, "stackside.cli.Main", draft(draft));
    java(QUICK, "stackside.cli.BareProgram", bare(bare));
    sameBytes(draft, bare);
  }

  private static String[] draft(Path out) {
    return new String[] {"draft", "content", "--on", DAY, "--out", out.toString()};
  }

  private String[] bare(Path out) {
    return new String[] {folder.resolve("values").toString(), out.toString()};
  }

  /** Leaves an archive of the classes that a run loads; answers the options that use it. */
  private List<String> archived(String name, String program, String... arguments) throws Exception {
    String archive = folder.resolve(name + ".jsa").toString();
    List<String> leaving = new ArrayList<>(QUICK);
    leaving.add("-XX:ArchiveClassesAtExit=" + archive);
    java(leaving, program, arguments);
    List<String> using = new ArrayList<>(QUICK);
    using.add("-XX:SharedArchiveFile=" + archive);
    return using;
  }

  private void demonstration(List<String> options, List<String> bareOptions) throws Exception {
    List<Run> drafts = new ArrayList<>();
    List<Run> bares = new ArrayList<>();
    List<Run> checks = new ArrayList<>();
    List<Run> prints = new ArrayList<>();
    for (int run = 0; run < RUNS; run++) {
      Path out = fresh("draft");
      drafts.add(java(options, "stackside.cli.Main", draft(out)));
      checks.add(java(options, "stackside.cli.Main", "check", "content", "--on", DAY));
      Run whole = java(bareOptions, "stackside.cli.BareProgram", bare(fresh("bare")));
      double reading = Long.parseLong(whole.out().strip()) / 1000.0;
      bares.add(new Run(whole.wall(), whole.cpu() - reading, ""));
      prints.add(chromium(out));
    }
    tell(new Runs(drafts), new Runs(bares), new Runs(checks), new Runs(prints));
  }

  private static void tell(Runs draft, Runs bare, Runs check, Runs print) {
    line("draft of the demonstration, whole process", draft.text());
    line("bare program, identical bytes, without reading values", bare.text());
    goal("(a) draft / bare", draft.least() / bare.least(), 2.5);
    line("headless Chromium prints one card's page", print.text());
    goal("(c) draft / Chromium, processor", draft.least() / print.least(), 1.0);
    goal("(c) draft / Chromium, wall", draft.wall() / print.wall(), 1.0);
    line("check of the demonstration", check.text());
    goal("(e) check / draft", check.least() / draft.least(), 1 / 3.0);
  }

  private void scale(int most) throws Exception {
    double smaller = perPage(most / 10);
    double larger = perPage(most);
    goal("(b) time per page, %dx / %dx".formatted(most, most / 10), larger / smaller, 1.3);
  }

  private double perPage(int times) throws Exception {
    Path content = fresh("unit-" + times);
    GeneratedUnit.of(times, 7).write(content);
    Path out = fresh("draft-" + times);
    Run run =
        java(
            LARGE,
            "stackside.cli.Main",
            "draft",
            content.toString(),
            "--on",
            DAY,
            "--out",
            out.toString());
    long pages = files(out).size();
    line(
        "draft of %dx within 1 GiB of heap (d)".formatted(times),
        pages == 0
            ? "FAILED: " + run.out()
            : "%.1f s, wall %.1f s, %d files, %.2f ms a file"
                .formatted(run.cpu(), run.wall(), pages, 1000 * run.cpu() / pages));
    return run.cpu() / Math.max(1, pages);
  }

  private static void line(String what, String found) {
    System.out.printf("%-52s %s%n", what, found);
  }

  private static void goal(String what, double ratio, double most) {
    line(what, "%.2f, goal %.2f: %s".formatted(ratio, most, ratio <= most ? "met" : "NOT met"));
  }

  private Run java(List<String> options, String program, String... arguments) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(options);
    command.addAll(List.of("-cp", jars, program));
    Collections.addAll(command, arguments);
    return run(command);
  }

  /** With a new profile and without the calls to other machines that a browser makes of itself. */
  private Run chromium(Path draft) throws Exception {
    String page =
        files(draft).keySet().stream()
            .filter(name -> name.startsWith("c/") && name.endsWith("index.html"))
            .findFirst()
            .orElseThrow();
    return run(
        List.of(
            "chromium",
            "--headless=new",
            "--no-sandbox",
            "--disable-gpu",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--user-data-dir=" + fresh("profile"),
            "--print-to-pdf=" + folder.resolve("page.pdf"),
            draft.resolve(page).toUri().toString()));
  }

  /** The shell counts the processor time of a process and of all that it starts. */
  private Run run(List<String> command) throws Exception {
    Path times = folder.resolve("times");
    List<String> timed = new ArrayList<>(List.of("bash", "-c"));
    timed.add(
        "TIMEFORMAT='%R %U %S'; { time \"$@\" 2>/dev/null 3>&- ; } 2> " + quoted(times.toString()));
    timed.add("bash");
    timed.addAll(command);
    Process process = new ProcessBuilder(timed).redirectErrorStream(true).start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    process.waitFor();
    String[] seconds = Files.readString(times).strip().split(" ", -1);
    return new Run(
        Double.parseDouble(seconds[0]),
        Double.parseDouble(seconds[1]) + Double.parseDouble(seconds[2]),
        out);
  }

  private static String quoted(String text) {
    return "'" + text.replace("'", "'\\''") + "'";
  }

  private static void sameBytes(Path draft, Path bare) throws IOException {
    SortedMap<String, byte[]> one = files(draft);
    SortedMap<String, byte[]> other = files(bare);
    List<String> different =
        Stream.concat(one.keySet().stream(), other.keySet().stream())
            .distinct()
            .filter(name -> !Arrays.equals(one.get(name), other.get(name)))
            .toList();
    if (!different.isEmpty()) {
      throw new IllegalStateException("the bare program writes other bytes: " + different);
    }
    line("bytes of the bare program", one.size() + " files, identical");
  }

  private static SortedMap<String, byte[]> files(Path folder) throws IOException {
    SortedMap<String, byte[]> files = new TreeMap<>();
    if (!Files.exists(folder)) {
      return files;
    }
    try (Stream<Path> walk = Files.walk(folder)) {
      for (Path file : walk.filter(Files::isRegularFile).collect(Collectors.toList())) {
        String name = folder.relativize(file).toString();
        if (!name.startsWith(".stackside")) {
          files.put(name, Files.size(file) > 1 << 20 ? new byte[0] : Files.readAllBytes(file));
        }
      }
    }
    return files;
  }

  private Path fresh(String name) throws IOException {
    Path path = folder.resolve(name);
    if (Files.exists(path)) {
      List<Path> all = new ArrayList<>();
      try (Stream<Path> walk = Files.walk(path)) {
        walk.forEach(all::add);
      }
      for (int i = all.size() - 1; i >= 0; i--) {
        Files.delete(all.get(i));
      }
    }
    return path;
  }
}
