package stackside.source;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/**
 * How much is read of a file. One that is larger is something else in its place, and is refused
 * before it fills the memory.
 */
public enum SizeLimit {
  /** A file that people write, or that grows by a line at a time. */
  WRITTEN(5),
  /** A file that an earlier run made. */
  MADE(50);

  private final int megabytes;

  SizeLimit(int megabytes) {
    this.megabytes = megabytes;
  }

  /** All bytes of a stream; absent, and no more read than the limit, where it holds more. */
  public Optional<byte[]> read(InputStream stream) throws IOException {
    int most = megabytes * 1024 * 1024;
    byte[] bytes = stream.readNBytes(most + 1);
    return bytes.length <= most ? Optional.of(bytes) : Optional.empty();
  }

  /** What to say of a file that holds more: {@code larger than 5 MB}. */
  public String exceeded() {
    return "larger than " + megabytes + " MB";
  }
}
