package stackside.hostile;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import stackside.cli.WholeChain;

/**
 * The process that takes the inputs, with its own heap: {@code HostileRun FOLDER SHARD SHARDS
 * THOUSANDS}. Prints its findings, one per line, and finally its counts. An input that takes too
 * long ends the process.
 */
final class HostileRun {
  /** How often as long as a sound unit an input may take before it counts as a hang. */
  private static final double MOST_TIMES = 10;

  private static final double MOST_SECONDS = 60;
  private static final int DRAFTED = 50;
  private static final int FEWEST_FILES = 20;

  private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
  private final OperatingSystemMXBean system =
      ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
  private final Map<Ground.Kind, Ground> grounds = new EnumMap<>(Ground.Kind.class);
  private final SortedMap<String, Integer> counts = new TreeMap<>();
  private final SortedMap<String, Double> seconds = new TreeMap<>();
  private final Thread worker = Thread.currentThread();
  private volatile String current = "";
  private volatile long since;
  private volatile long processorSince;
  private double mostProcessorSeconds;
  private int readable;
  private int drafts;
  private double slowest;
  private String slowestInput = "";

  private HostileRun() {}

  public static void main(String[] arguments) throws Exception {
    HostileRun run = new HostileRun();
    Path folder = Path.of(arguments[0]);
    for (Ground.Kind kind : Ground.Kind.values()) {
      run.grounds.put(kind, Ground.in(folder.resolve(kind.name()), kind));
    }
    run.warmUp();
    run.watch();
    int shard = Integer.parseInt(arguments[1]);
    int shards = Integer.parseInt(arguments[2]);
    List<Input> inputs = Inputs.all(Integer.parseInt(arguments[3]));
    for (int i = shard; i < inputs.size(); i += shards) {
      run.tries(inputs.get(i));
    }
    run.printCounts();
    System.exit(0);
  }

  /**
   * Loads the classes once, so that the time for this is not charged to an input; then takes the
   * time of the longest work that an input can ask for, on this machine.
   */
  private void warmUp() throws IOException {
    WholeChain.of(grounds.get(Ground.Kind.DEMONSTRATION).folder());
    WholeChain.of(grounds.get(Ground.Kind.ONE_GENERATOR).folder()).draft();
    processorSince = system.getProcessCpuTime();
    WholeChain.of(grounds.get(Ground.Kind.ONE_GENERATOR).folder()).draft();
    mostProcessorSeconds = MOST_TIMES * processor();
  }

  private void watch() {
    Thread watch = new Thread(this::watchUntilTooLong, "watch");
    watch.setDaemon(true);
    watch.start();
  }

  private void watchUntilTooLong() {
    try {
      while (true) {
        TimeUnit.MILLISECONDS.sleep(100);
        String input = current;
        boolean tooLong =
            !input.isEmpty() && (processor() > mostProcessorSeconds || wall() > MOST_SECONDS);
        if (tooLong && input.equals(current)) {
          found(input, "HANG " + at(worker.getStackTrace()));
          Runtime.getRuntime().halt(4);
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private double wall() {
    return (System.nanoTime() - since) / 1e9;
  }

  private double processor() {
    return (system.getProcessCpuTime() - processorSince) / 1e9;
  }

  private static String at(StackTraceElement[] trace) {
    StringBuilder places = new StringBuilder();
    for (int i = 0; i < Math.min(40, trace.length); i++) {
      places.append(" < ").append(trace[i]);
    }
    return places.toString();
  }

  private void tries(Input input) throws IOException {
    Ground ground = grounds.get(input.ground());
    SortedMap<String, byte[]> files = input.files().get();
    ground.lay(files);
    String name = input.toString();
    begin(name);
    try {
      WholeChain chain = WholeChain.of(ground.folder());
      String text = chain.text();
      String json = chain.json();
      draftNowAndThen(chain, input);
      end(name, input.kind() + " on " + input.ground());
      Words.wrong(chain, text, json).forEach(what -> found(name, what));
    } catch (Throwable e) {
      found(name, "THROWN " + e + at(e.getStackTrace()));
    }
    current = "";
    counts.merge(input.kind(), 1, Integer::sum);
    ground.restore(files);
  }

  private void begin(String name) {
    processorSince = system.getProcessCpuTime();
    since = System.nanoTime();
    current = name;
  }

  private void end(String name, String kind) {
    double took = processor();
    current = "";
    seconds.merge(kind, took, Double::sum);
    if (took > slowest) {
      slowest = took;
      slowestInput = name;
    }
  }

  private void draftNowAndThen(WholeChain chain, Input input) {
    if (chain.isReadable() && input.ground() == Ground.Kind.ONE_GENERATOR) {
      readable++;
      if (readable % DRAFTED == 0) {
        drafts++;
        if (chain.draft().size() < FEWEST_FILES) {
          found(input.toString(), "a draft of hardly any files");
        }
      }
    }
  }

  private void found(String name, String what) {
    out.println("FOUND " + name.replace('\n', ' ') + ": " + what.replace('\n', ' '));
  }

  private void printCounts() {
    counts.forEach((kind, count) -> out.println("COUNT " + kind + "=" + count));
    seconds.forEach((kind, spent) -> out.printf("SPENT %s: %.1f s%n", kind, spent));
    out.println("DRAFTS=" + drafts);
    out.printf("SLOWEST=%.2f s of %.1f, %s%n", slowest, mostProcessorSeconds, slowestInput);
  }
}
