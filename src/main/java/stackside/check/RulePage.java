package stackside.check;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import stackside.source.Fault;

/**
 * The longer words about a rule or a fault of reading, as Markdown: a file of its own beside the
 * program, always under the same four headings. Printed by {@code explain} and on the rule's page.
 */
public record RulePage(
    Fault fault, String whatItChecks, String whyItMatters, String wrong, String right) {

  /** The page of a fault; absent if there is none, which a test does not let happen for rules. */
  public static Optional<RulePage> of(Fault fault) {
    return text("/stackside/rules/" + fault.id() + ".md").map(text -> read(fault, text));
  }

  private static RulePage read(Fault fault, String text) {
    return new RulePage(
        fault,
        section(text, "What it checks"),
        section(text, "Why it matters"),
        section(text, "Wrong"),
        section(text, "Right"));
  }

  private static String section(String text, String heading) {
    String mark = "## " + heading + "\n";
    int start = ("\n" + text).indexOf("\n" + mark);
    if (start < 0) {
      return "";
    }
    String rest = text.substring(start + mark.length());
    int end = rest.indexOf("\n## ");
    return (end < 0 ? rest : rest.substring(0, end)).strip();
  }

  private static Optional<String> text(String resource) {
    try (InputStream stream = RulePage.class.getResourceAsStream(resource)) {
      return stream == null
          ? Optional.empty()
          : Optional.of(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + resource, e);
    }
  }
}
