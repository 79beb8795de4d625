package stackside.source;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/**
 * How much of a file is read. A larger file must be something else in its place, and is refused
 * before it fills the memory.
 */
public enum SizeLimit {
  /** A file written by people, or growing by a line at a time. */
  WRITTEN(5),
  /** A file made by an earlier run. */
  MADE(50);

  private final int megabytes;

  SizeLimit(int megabytes) {
    this.megabytes = megabytes;
  }

  /**
   * All bytes of a stream; absent if it holds more than the limit. Reads one byte beyond it at
   * most.
   */
  public Optional<byte[]> read(InputStream stream) throws IOException {
    int most = megabytes * 1024 * 1024;
    byte[] bytes = stream.readNBytes(most + 1);
    return bytes.length <= most ? Optional.of(bytes) : Optional.empty();
  }

  /** How to describe a file that holds more: {@code larger than 5 MB}. */
  public String exceeded() {
    return "larger than " + megabytes + " MB";
  }
}
