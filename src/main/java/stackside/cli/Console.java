package stackside.cli;

import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** The two streams of a command, in UTF-8 and with plain line ends whatever the system's habits. */
final class Console {
  private final PrintWriter out;
  private final PrintWriter err;

  Console(OutputStream out, OutputStream err) {
    this.out = writer(out);
    this.err = writer(err);
  }

  private static PrintWriter writer(OutputStream stream) {
    return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8));
  }

  /** One line of the result. */
  void result(String line) {
    out.print(line + "\n");
  }

  /** A question that waits for an answer on the same line. */
  void asking(String question) {
    out.print(question);
    out.flush();
  }

  /** One line about what went wrong. */
  void problem(String line) {
    err.print(line + "\n");
    err.flush();
  }

  /** Text that is overwritten by what comes next, for somebody who watches. */
  void passing(String text) {
    err.print(text);
    err.flush();
  }

  /** Whether all results went out; a full disk behind a redirect must not look like success. */
  boolean delivered() {
    err.flush();
    return !out.checkError();
  }
}
