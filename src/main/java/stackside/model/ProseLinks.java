package stackside.model;

import java.util.List;
import java.util.stream.Stream;

/** Finds the links in a text. */
final class ProseLinks {
  private ProseLinks() {}

  static Stream<Prose.ThingLink> of(List<Prose.Block> blocks) {
    return blocks.stream().flatMap(ProseLinks::block);
  }

  private static Stream<Prose.ThingLink> block(Prose.Block block) {
    if (block instanceof Prose.Heading heading) {
      return inline(heading.words());
    }
    if (block instanceof Prose.Paragraph paragraph) {
      return inline(paragraph.words());
    }
    if (block instanceof Prose.Items items) {
      return items.items().stream().flatMap(ProseLinks::of);
    }
    if (block instanceof Prose.Table table) {
      return Stream.concat(Stream.of(table.header()), table.rows().stream())
          .flatMap(List::stream)
          .flatMap(ProseLinks::inline);
    }
    if (block instanceof Prose.Figure) {
      return Stream.of();
    }
    throw new IllegalStateException("nobody knows what links stand in " + block);
  }

  private static Stream<Prose.ThingLink> inline(List<Prose.Inline> words) {
    return words.stream().flatMap(ProseLinks::piece);
  }

  private static Stream<Prose.ThingLink> piece(Prose.Inline piece) {
    if (piece instanceof Prose.ThingLink link) {
      return Stream.of(link);
    }
    if (piece instanceof Prose.Strong strong) {
      return inline(strong.words());
    }
    if (piece instanceof Prose.Emphasis emphasis) {
      return inline(emphasis.words());
    }
    if (piece instanceof Prose.Words
        || piece instanceof Prose.Literal
        || piece instanceof Prose.WebLink) {
      return Stream.of();
    }
    throw new IllegalStateException("nobody knows what links stand in " + piece);
  }
}
