package stackside.publish;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stackside.derive.signed.Fingerprint;

/**
 * The file that shows that Stackside made a folder, and lists the files it put there. A folder
 * without a marker, or with files that the marker does not list, belongs to somebody else.
 *
 * @param list the files of the folder, without the marker itself
 */
record Marker(FileList list) {
  static final String NAME = ".stackside";
  private static final String FIRST =
      "Stackside made this folder and replaces all of it at each build. Keep nothing of your own here.";
  private static final String FORMAT = "format 2";
  private static final int HEAD = 2;

  byte[] bytes() {
    return (FIRST + "\n" + FORMAT + "\n" + list.text()).getBytes(StandardCharsets.UTF_8);
  }

  /** Reads a marker; absent if it is damaged or its format is unknown. */
  static Optional<Marker> read(byte[] bytes) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    if (!text.startsWith(FIRST + "\n" + FORMAT + "\n") || !text.endsWith("\n")) {
      return Optional.empty();
    }
    SortedMap<String, Fingerprint> files = new TreeMap<>();
    for (String line : text.lines().skip(HEAD).toList()) {
      String[] parts = line.split(" ", 2);
      if (parts.length < 2 || !Fingerprint.isFingerprint(parts[0])) {
        return Optional.empty();
      }
      files.put(parts[1], new Fingerprint(parts[0]));
    }
    return Optional.of(new Marker(new FileList(files)));
  }
}
