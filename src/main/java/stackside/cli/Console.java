package stackside.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** The two streams of a command, in UTF-8 and with plain line ends on every system. */
final class Console {
  private final Stream out;
  private final Stream err;

  Console(OutputStream out, OutputStream err) {
    this.out = new Stream(out);
    this.err = new Stream(err);
  }

  /** One of the two streams. It remembers whether anything could not be written. */
  private static final class Stream {
    private final OutputStream under;
    private final PrintWriter writer;

    Stream(OutputStream under) {
      this.under = under;
      this.writer = new PrintWriter(new OutputStreamWriter(under, StandardCharsets.UTF_8));
    }

    void print(String text) {
      writer.print(text);
    }

    /** Java's own streams say nothing about a failure until they are asked. */
    boolean refused() {
      return writer.checkError() || (under instanceof PrintStream stream && stream.checkError());
    }
  }

  /** One line of the result. */
  void result(String line) {
    out.print(line + "\n");
  }

  /**
   * A question that waits for an answer on the same line.
   *
   * @throws IOException if it cannot be seen: nobody can answer then
   */
  void asking(String question) throws IOException {
    out.print(question);
    if (out.refused()) {
      throw new IOException("the question could not be shown");
    }
  }

  /** One line about what went wrong. */
  void problem(String line) {
    err.print(line + "\n");
    err.writer.flush();
  }

  /** Text that the next text overwrites, for somebody who watches. */
  void passing(String text) {
    err.print(text);
    err.writer.flush();
  }

  /**
   * Whether everything was written. A full disk behind a redirect must not look like success. A
   * loss on one stream is reported on the other.
   */
  boolean delivered() {
    boolean lostResults = out.refused();
    boolean lostProblems = err.refused();
    if (lostResults) {
      err.print(lost("the results"));
    }
    if (lostProblems) {
      out.print(lost("the messages"));
    }
    if (lostResults || lostProblems) {
      out.writer.flush();
      err.writer.flush();
    }
    return !lostResults && !lostProblems;
  }

  private static String lost(String what) {
    return "stackside: not all of "
        + what
        + " could be written, so some are lost; files that the command made stand as it made them."
        + " Make room for the output, then run the command again\n";
  }
}
