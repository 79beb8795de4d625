package stackside.model;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Strips the mark-up from a text. */
final class ProseText {
  private ProseText() {}

  static String of(List<Prose.Block> blocks) {
    return blocks.stream()
        .map(ProseText::block)
        .filter(text -> !text.isEmpty())
        .collect(Collectors.joining(" "));
  }

  private static String block(Prose.Block block) {
    if (block instanceof Prose.Heading heading) {
      return inline(heading.words());
    }
    if (block instanceof Prose.Paragraph paragraph) {
      return inline(paragraph.words());
    }
    if (block instanceof Prose.Items items) {
      return items.items().stream().map(ProseText::of).collect(Collectors.joining(" "));
    }
    if (block instanceof Prose.Table table) {
      return Stream.concat(Stream.of(table.header()), table.rows().stream())
          .flatMap(List::stream)
          .map(ProseText::inline)
          .collect(Collectors.joining(" "));
    }
    if (block instanceof Prose.Figure) {
      return "";
    }
    throw new IllegalStateException("a block of prose without a text: " + block);
  }

  static String inline(List<Prose.Inline> words) {
    return words.stream().map(ProseText::piece).collect(Collectors.joining());
  }

  private static String piece(Prose.Inline piece) {
    if (piece instanceof Prose.Words words) {
      return words.text();
    }
    if (piece instanceof Prose.Literal literal) {
      return literal.text();
    }
    if (piece instanceof Prose.Strong strong) {
      return inline(strong.words());
    }
    if (piece instanceof Prose.Emphasis emphasis) {
      return inline(emphasis.words());
    }
    if (piece instanceof Prose.ThingLink link) {
      return inline(link.words());
    }
    if (piece instanceof Prose.WebLink link) {
      return inline(link.words());
    }
    throw new IllegalStateException("prose without a text: " + piece);
  }
}
