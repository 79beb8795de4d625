package stackside.source;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Strict reading of UTF-8 text. */
public final class Utf8 {
  private Utf8() {}

  /** The text of these bytes; absent if they are not valid UTF-8. */
  public static Optional<String> text(byte[] bytes) {
    try {
      return Optional.of(
          StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
    } catch (CharacterCodingException e) {
      return Optional.empty();
    }
  }
}
