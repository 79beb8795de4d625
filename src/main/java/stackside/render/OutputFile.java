package stackside.render;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * One finished file of the site folder: a page, a card, a style sheet. Renderers make it; {@code
 * publish} writes it. Its bytes never change.
 *
 * @param path relative to the site folder, with forward slashes: {@code rooms/room-2.html}
 */
@SuppressWarnings("ArrayRecordComponent") // equals below compares the content
public record OutputFile(String path, byte[] bytes) {
  private static final int LONGEST = 200;
  private static final Pattern SEGMENT =
      Pattern.compile("[A-Za-z0-9_][A-Za-z0-9._-]*(?<!\\.)|\\.[a-z]+");
  private static final Pattern DEVICE = Pattern.compile("(con|prn|aux|nul|com\\d|lpt\\d)(\\..*)?");

  /**
   * @throws IllegalArgumentException if the path could lead out of the folder, or does not mean the
   *     same file on every system; that is a bug in a renderer
   */
  public OutputFile {
    if (path.length() > LONGEST || !Arrays.stream(path.split("/", -1)).allMatch(OutputFile::safe)) {
      throw new IllegalArgumentException("not a path of an output file: '" + path + "'");
    }
  }

  /** A file of UTF-8 text. */
  public static OutputFile text(String path, String text) {
    return new OutputFile(path, text.getBytes(StandardCharsets.UTF_8));
  }

  private static boolean safe(String segment) {
    return SEGMENT.matcher(segment).matches()
        && !DEVICE.matcher(segment.toLowerCase(Locale.ROOT)).matches();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof OutputFile file
        && path.equals(file.path)
        && Arrays.equals(bytes, file.bytes);
  }

  @Override
  public int hashCode() {
    return 31 * path.hashCode() + Arrays.hashCode(bytes);
  }

  @Override
  public String toString() {
    return path + " (" + bytes.length + " bytes)";
  }
}
