package stackside.hostile;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import stackside.Units;
import stackside.cli.WholeChain;
import stackside.model.ContactHours;
import stackside.model.ThingId;
import stackside.quantity.Band;
import stackside.quantity.Kilograms;
import stackside.quantity.LoadRange;
import stackside.quantity.Measure;
import stackside.quantity.Millimetres;
import stackside.quantity.PeakVolts;
import stackside.quantity.PowerRange;
import stackside.quantity.Seconds;
import stackside.quantity.Watts;

/**
 * What a fuzzer can attack. The first byte of a file's input chooses the place of the file. A
 * unit's input holds several files, each below a line {@code === NAME}.
 */
enum FuzzTarget {
  YAML("yaml"),
  CSV("csv"),
  MARKDOWN("md"),
  QUANTITY(""),
  UNIT("");

  private static final String FILE = "=== ";

  private final String ending;

  FuzzTarget(String ending) {
    this.ending = ending;
  }

  /** Tries one input. An exception is a finding. */
  void run(byte[] data, Ground ground) throws IOException {
    if (this == QUANTITY) {
      quantities(new String(data, UTF_8));
      return;
    }
    SortedMap<String, byte[]> files = files(data);
    ground.lay(files);
    WholeChain chain = WholeChain.of(ground.folder());
    List<String> wrong = Words.wrong(chain, chain.text(), chain.json());
    ground.restore(files);
    if (!wrong.isEmpty()) {
      throw new AssertionError(wrong.get(0));
    }
  }

  /** The files that an input represents. */
  SortedMap<String, byte[]> files(byte[] data) {
    if (this == UNIT) {
      return several(new String(data, UTF_8));
    }
    List<String> places = Ground.places(ending);
    String place = data.length == 0 ? places.get(0) : places.get((data[0] & 0xFF) % places.size());
    byte[] rest = data.length == 0 ? data : Arrays.copyOfRange(data, 1, data.length);
    return new TreeMap<>(Map.of(place, rest));
  }

  private static SortedMap<String, byte[]> several(String text) {
    SortedMap<String, byte[]> files = new TreeMap<>();
    for (String part : text.split("(?m)^" + FILE, -1)) {
      int end = part.indexOf('\n');
      if (end > 0
          && part.substring(0, end).matches("[a-z-]{1,30}(/[a-z0-9-]{1,30})?\\.[a-z]{1,4}")) {
        files.put(part.substring(0, end), part.substring(end + 1).getBytes(UTF_8));
      }
    }
    return files;
  }

  /** Initial inputs: the corpus, and the demonstration's files in their places. */
  List<byte[]> seeds() throws IOException {
    if (this == QUANTITY) {
      return List.of(
              "60 W",
              "2000 V peak",
              "10 W to 120 W in steps of 5 W",
              "50 ohm to 2000 ohm",
              "any",
              "under 10 mm",
              "20 mm and over",
              "Monday to Friday 08:00 to 17:00",
              "all other hours",
              "socket:cordgrass/mono-1",
              "1.5 kV peak",
              "450 ms")
          .stream()
          .map(text -> text.getBytes(UTF_8))
          .toList();
    }
    SortedMap<String, String> sound = Ground.files(Ground.Kind.ONE_GENERATOR);
    List<byte[]> seeds = new ArrayList<>();
    if (this == UNIT) {
      return List.of(
          whole(Units.folder("cholla")), whole(Path.of("src/test/resources/golden/tiny/in")));
    }
    sound.forEach(
        (name, text) -> place(name).ifPresent(at -> seeds.add(with(at, text.getBytes(UTF_8)))));
    int next = 0;
    for (Path file : Corpus.files()) {
      if (file.toString().endsWith("." + ending)) {
        seeds.add(with(next++ % Ground.places(ending).size(), Corpus.bytes(file)));
      }
    }
    return seeds;
  }

  private static byte[] whole(Path folder) throws IOException {
    ByteArrayOutputStream unit = new ByteArrayOutputStream();
    try (Stream<Path> walk = Files.walk(folder)) {
      for (Path file : walk.filter(Files::isRegularFile).sorted().toList()) {
        unit.writeBytes((FILE + folder.relativize(file) + "\n").getBytes(UTF_8));
        unit.writeBytes(Files.readAllBytes(file));
      }
    }
    return unit.toByteArray();
  }

  private Optional<Integer> place(String name) {
    List<String> places = Ground.places(ending);
    int at = places.indexOf(name.contains("/") ? name.replaceFirst("/[^.]*", "/a") : name);
    return at < 0 ? Optional.empty() : Optional.of(at);
  }

  private static byte[] with(int place, byte[] bytes) {
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    whole.write(place);
    whole.writeBytes(bytes);
    return whole.toByteArray();
  }

  private static void quantities(String text) {
    for (Measure<?> measure :
        List.of(Watts.MEASURE, PeakVolts.MEASURE, Seconds.MEASURE, Kilograms.MEASURE)) {
      reads(() -> measure.parse(text));
    }
    reads(() -> Band.parse(text, Millimetres.MEASURE).text());
    reads(() -> Band.parse(text, Kilograms.MEASURE).text());
    reads(() -> PowerRange.parse(text).text());
    reads(() -> LoadRange.parse(text).text());
    reads(() -> ContactHours.parse(text));
    reads(() -> ThingId.parse(text));
  }

  /** An unreadable text must raise the exception for it, which says what to do instead. */
  private static void reads(Runnable reading) {
    try {
      reading.run();
    } catch (stackside.quantity.UnreadableQuantity | stackside.model.UnreadableText e) {
      if (e.getMessage() == null || e.getMessage().isBlank()) {
        throw new AssertionError("no words", e);
      }
    }
  }
}
