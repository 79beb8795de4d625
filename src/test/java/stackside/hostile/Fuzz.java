package stackside.hostile;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;

/**
 * The fuzzer's entry point, in a separate process. Its arguments are the target and a folder to
 * write to.
 */
public final class Fuzz {
  @SuppressWarnings("NonFinalStaticField") // the fuzzer calls static methods in one process
  private static FuzzTarget target = FuzzTarget.QUANTITY;

  @SuppressWarnings({"NonFinalStaticField", "NullAway"})
  private static Ground ground;

  private Fuzz() {}

  /** Called once by the fuzzer. */
  public static void fuzzerInitialize(String[] arguments) throws IOException {
    target = FuzzTarget.valueOf(arguments[0].toUpperCase(Locale.ROOT));
    ground = Ground.in(Path.of(arguments[1]), Ground.Kind.BARE);
  }

  /** Called by the fuzzer for each input. */
  public static void fuzzerTestOneInput(byte[] data) throws IOException {
    target.run(data, ground);
  }
}
