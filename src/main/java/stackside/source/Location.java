package stackside.source;

import java.util.Comparator;

/**
 * A stretch of one line of one content file. Lines and columns count from 1; columns and lengths
 * are UTF-16 units of the line as read. The file is relative to the content folder, with forward
 * slashes.
 */
public record Location(String file, int line, int column, int length)
    implements Comparable<Location> {

  private static final Comparator<Location> ORDER =
      Comparator.comparing(Location::file)
          .thenComparingInt(Location::line)
          .thenComparingInt(Location::column)
          .thenComparingInt(Location::length);

  public Location {
    if (file.isEmpty() || line < 1 || column < 1 || length < 0) {
      throw new IllegalArgumentException(
          "no such place: " + file + ":" + line + ":" + column + " length " + length);
    }
  }

  /** The beginning of a file, for a problem with the file as a whole. */
  public static Location startOf(String file) {
    return new Location(file, 1, 1, 0);
  }

  /** Whether both are on the same line of the same file. */
  public boolean isOnLineOf(Location other) {
    return file.equals(other.file) && line == other.line;
  }

  @Override
  public int compareTo(Location other) {
    return ORDER.compare(this, other);
  }

  /** The place as printed in messages: {@code rooms/room-2.yaml:14:9}. */
  @Override
  public String toString() {
    return file + ":" + line + ":" + column;
  }
}
