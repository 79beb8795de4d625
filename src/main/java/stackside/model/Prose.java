package stackside.model;

import java.util.List;
import stackside.source.Location;

/**
 * A text with paragraphs, lists, tables and links, read from Markdown. It never contains raw HTML.
 */
public record Prose(Location at, List<Block> blocks) {
  public Prose {
    blocks = List.copyOf(blocks);
  }

  /** One block of a text. */
  public sealed interface Block {}

  /** A heading; levels start at 1. */
  public record Heading(int level, List<Inline> words) implements Block {
    public Heading {
      words = List.copyOf(words);
    }
  }

  /** A paragraph. */
  public record Paragraph(Location at, List<Inline> words) implements Block {
    public Paragraph {
      words = List.copyOf(words);
    }
  }

  /** A list whose items are lists of blocks; numbered items start at 1. */
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
  public record Table(Location at, List<List<Inline>> header, List<List<List<Inline>>> rows)
      implements Block {
    public Table {
      header = header.stream().map(List::copyOf).toList();
      rows = rows.stream().map(row -> row.stream().map(List::copyOf).toList()).toList();
    }
  }

  /**
   * A figure that the program draws, written as a fenced block with the language {@code figure}.
   * The first line names the figure; the other lines name the things that it shows.
   */
  public record Figure(Location at, String name, List<Fact<ThingId>> about) implements Block {
    public Figure {
      about = List.copyOf(about);
    }
  }

  /** Part of a line. */
  public sealed interface Inline {}

  /** Plain words. */
  public record Words(String text) implements Inline {}

  /** Strongly emphasised words. */
  public record Strong(List<Inline> words) implements Inline {
    public Strong {
      words = List.copyOf(words);
    }
  }

  /** Emphasised words, such as a term where it first appears. */
  public record Emphasis(List<Inline> words) implements Inline {
    public Emphasis {
      words = List.copyOf(words);
    }
  }

  /** Words exactly as they appear on a display. */
  public record Literal(String text) implements Inline {}

  /** A link to a thing of the unit. */
  public record ThingLink(Location at, ThingId target, List<Inline> words) implements Inline {
    public ThingLink {
      words = List.copyOf(words);
    }
  }

  /** A link to an external site; only https addresses are allowed. */
  public record WebLink(String address, List<Inline> words) implements Inline {
    public WebLink {
      words = List.copyOf(words);
    }
  }

  /** The links to things of the unit, in text order. */
  public List<ThingLink> links() {
    return ProseLinks.of(blocks).toList();
  }

  /** A line without mark-up. */
  public static String plain(List<Inline> words) {
    return ProseText.inline(words);
  }

  /** The text without mark-up, its blocks joined by spaces. */
  public String plain() {
    return ProseText.of(blocks);
  }
}
