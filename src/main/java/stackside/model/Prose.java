package stackside.model;

import java.util.List;
import stackside.source.Location;

/**
 * A text with paragraphs, lists, tables and links, as read from Markdown. Raw HTML never gets in
 * here.
 */
public record Prose(Location at, List<Block> blocks) {
  public Prose {
    blocks = List.copyOf(blocks);
  }

  /** One block of a text. */
  public sealed interface Block {}

  /** A heading; levels count from 1. */
  public record Heading(int level, List<Inline> words) implements Block {
    public Heading {
      words = List.copyOf(words);
    }
  }

  /** A paragraph. */
  public record Paragraph(List<Inline> words) implements Block {
    public Paragraph {
      words = List.copyOf(words);
    }
  }

  /** A list of items, each a list of blocks; numbered ones count from 1. */
  public record Items(Order order, List<List<Block>> items) implements Block {
    public Items {
      items = items.stream().map(List::copyOf).toList();
    }
  }

  /** Whether the items of a list are numbered. */
  public enum Order {
    NUMBERED,
    BULLETS
  }

  /** A table: header cells, then rows of cells. */
  public record Table(List<List<Inline>> header, List<List<List<Inline>>> rows) implements Block {
    public Table {
      header = header.stream().map(List::copyOf).toList();
      rows = rows.stream().map(row -> row.stream().map(List::copyOf).toList()).toList();
    }
  }

  /**
   * A figure that the program draws, written as a fenced block of the language {@code figure}: the
   * first line names it, further lines name things that it is about.
   */
  public record Figure(Location at, String name, List<Fact<ThingId>> about) implements Block {
    public Figure {
      about = List.copyOf(about);
    }
  }

  /** A piece of a line. */
  public sealed interface Inline {}

  /** Plain words. */
  public record Words(String text) implements Inline {}

  /** Words that matter most. */
  public record Strong(List<Inline> words) implements Inline {
    public Strong {
      words = List.copyOf(words);
    }
  }

  /** Words set apart, such as a term at its first use. */
  public record Emphasis(List<Inline> words) implements Inline {
    public Emphasis {
      words = List.copyOf(words);
    }
  }

  /** Words exactly as a display shows them. */
  public record Literal(String text) implements Inline {}

  /** A link to a thing of the unit. */
  public record ThingLink(Location at, ThingId target, List<Inline> words) implements Inline {
    public ThingLink {
      words = List.copyOf(words);
    }
  }

  /** A link out of the site; only https addresses. */
  public record WebLink(String address, List<Inline> words) implements Inline {
    public WebLink {
      words = List.copyOf(words);
    }
  }

  /** The links to things of the unit, in the order of the text. */
  public List<ThingLink> links() {
    return ProseLinks.of(blocks).toList();
  }

  /** The text without any mark-up, blocks joined by a space. */
  public String plain() {
    return ProseText.of(blocks);
  }
}
