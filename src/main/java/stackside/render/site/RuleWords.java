package stackside.render.site;

import java.util.ArrayList;
import java.util.List;

/**
 * Formats the text of a rule's page: paragraphs, and fenced examples as an author types them. Rule
 * pages are part of the program and use no other mark-up apart from back ticks.
 */
final class RuleWords {
  private static final String FENCE = "```";

  private RuleWords() {}

  static List<Part> parts(String markdown) {
    List<Part> parts = new ArrayList<>();
    List<String> lines = new ArrayList<>();
    boolean source = false;
    for (String line : markdown.lines().toList()) {
      if (line.startsWith(FENCE)) {
        flush(lines, source, parts);
        source = !source;
      } else if (line.isBlank() && !source) {
        flush(lines, false, parts);
      } else {
        lines.add(line);
      }
    }
    flush(lines, source, parts);
    return parts;
  }

  private static void flush(List<String> lines, boolean source, List<Part> parts) {
    if (!lines.isEmpty()) {
      parts.add(
          source
              ? new Part.Source(String.join("\n", lines))
              : new Part.Say(paragraph(String.join(" ", lines))));
      lines.clear();
    }
  }

  /** Every second stretch between back ticks is literal text. */
  private static RichLine paragraph(String text) {
    List<TextPiece> pieces = new ArrayList<>();
    boolean typed = false;
    for (String stretch : text.split("`", -1)) {
      if (!stretch.isEmpty()) {
        pieces.add(typed ? TextPiece.shown(stretch) : TextPiece.of(stretch));
      }
      typed = !typed;
    }
    return new RichLine(pieces);
  }
}
