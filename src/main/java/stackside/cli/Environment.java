package stackside.cli;

import java.io.Console;
import java.io.InputStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.function.Supplier;
import stackside.publish.Disk;
import stackside.publish.LocalDisk;

/**
 * What a command finds around it. Tests replace it. Nothing else asks for the day.
 *
 * @param folder the working folder, against which relative paths count
 * @param today the day, where {@code --on} does not give one
 * @param terminal whether somebody watches
 * @param in where answers are typed
 */
record Environment(
    Path folder, Supplier<LocalDate> today, Disk disk, Audience terminal, InputStream in) {

  /** Whether somebody watches the output as it appears. */
  enum Audience {
    TERMINAL,
    PIPE
  }

  static Environment real() {
    return new Environment(
        Path.of(""),
        () -> LocalDate.now(ZoneId.systemDefault()),
        new LocalDisk(),
        watched() ? Audience.TERMINAL : Audience.PIPE,
        System.in);
  }

  /** Before Java 22 there is a console only at a terminal. Later versions can be asked. */
  @SuppressWarnings("SystemConsoleNull")
  private static boolean watched() {
    Console console = System.console();
    if (console == null || Runtime.version().feature() < 22) {
      return console != null;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException e) {
      return false;
    }
  }
}
