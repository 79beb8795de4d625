package stackside.content;

import com.vladsch.flexmark.ast.AutoLink;
import com.vladsch.flexmark.ast.BulletList;
import com.vladsch.flexmark.ast.Code;
import com.vladsch.flexmark.ast.Emphasis;
import com.vladsch.flexmark.ast.FencedCodeBlock;
import com.vladsch.flexmark.ast.HardLineBreak;
import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.ast.HtmlBlockBase;
import com.vladsch.flexmark.ast.HtmlEntity;
import com.vladsch.flexmark.ast.HtmlInlineBase;
import com.vladsch.flexmark.ast.Link;
import com.vladsch.flexmark.ast.LinkRef;
import com.vladsch.flexmark.ast.ListBlock;
import com.vladsch.flexmark.ast.Paragraph;
import com.vladsch.flexmark.ast.SoftLineBreak;
import com.vladsch.flexmark.ast.StrongEmphasis;
import com.vladsch.flexmark.ast.Text;
import com.vladsch.flexmark.ast.TextBase;
import com.vladsch.flexmark.ext.tables.TableBlock;
import com.vladsch.flexmark.ext.tables.TableCell;
import com.vladsch.flexmark.ext.tables.TableHead;
import com.vladsch.flexmark.ext.tables.TableRow;
import com.vladsch.flexmark.ext.tables.TableSeparator;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import com.vladsch.flexmark.util.sequence.Escaping;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import stackside.model.Fact;
import stackside.model.Kind;
import stackside.model.Prose;
import stackside.model.ThingId;
import stackside.source.Location;

/**
 * Reads Markdown into prose. Only what pages and cards can print gets through. HTML, pictures, and
 * links other than to things of the unit and to https addresses are problems at their place.
 */
final class MarkdownReader {
  private static final Pattern SPACES = Pattern.compile("\\s+");
  private static final int DEEPEST = 20;
  private static final int LONGEST_LINE = 3_000;

  private final TextPlaces places;
  private final Findings findings;
  private final Mentions mentions;
  private int depth;

  MarkdownReader(TextPlaces places, Findings findings, Mentions mentions) {
    this.places = places;
    this.findings = findings;
    this.mentions = mentions;
  }

  Prose prose(Location at, String text) {
    return hasEndlessLine(text)
        ? new Prose(at, List.of())
        : new Prose(at, blocks(MarkdownParser.parse(text)));
  }

  /** Markdown with an absurdly long line would take far too long to read. */
  private boolean hasEndlessLine(String text) {
    int start = 0;
    for (String line : text.split("\n", -1)) {
      if (line.length() > LONGEST_LINE) {
        findings.add(
            ReadingFaults.TOO_LONG
                .at(
                    places.of(start, start + 1),
                    "this line is " + line.length() + " characters long")
                .help("break it into lines under " + LONGEST_LINE + " characters"));
        return true;
      }
      start += line.length() + 1;
    }
    return false;
  }

  private List<Prose.Block> blocks(Node parent) {
    List<Prose.Block> blocks = new ArrayList<>();
    if (entersTooDeep(parent)) {
      return blocks;
    }
    for (Node child : parent.getChildren()) {
      block(child).ifPresent(blocks::add);
    }
    depth--;
    return blocks;
  }

  private boolean entersTooDeep(Node parent) {
    if (depth >= DEEPEST) {
      findings.add(
          ReadingFaults.NESTED_TOO_DEEP
              .at(place(parent.getChars()), "this text nests more than " + DEEPEST + " deep here")
              .help("look for list marks, stars or brackets that do not belong"));
      return true;
    }
    depth++;
    return false;
  }

  private Optional<Prose.Block> block(Node node) {
    if (node instanceof Heading heading) {
      return Optional.of(new Prose.Heading(heading.getLevel(), inlines(heading)));
    }
    if (node instanceof Paragraph paragraph) {
      return Optional.of(new Prose.Paragraph(place(paragraph.getChars()), inlines(paragraph)));
    }
    if (node instanceof ListBlock list) {
      return Optional.of(items(list));
    }
    if (node instanceof TableBlock table) {
      return Optional.of(table(table));
    }
    if (node instanceof FencedCodeBlock fence
        && fence.getInfo().toString().strip().equals("figure")) {
      return figure(fence);
    }
    if (node instanceof HtmlBlockBase) {
      refuseHtml(node);
      return Optional.empty();
    }
    refuseBlock(node);
    return Optional.empty();
  }

  private Prose.Items items(ListBlock list) {
    List<List<Prose.Block>> items = new ArrayList<>();
    for (Node item : list.getChildren()) {
      items.add(blocks(item));
    }
    return new Prose.Items(
        list instanceof BulletList ? Prose.Order.BULLETS : Prose.Order.NUMBERED, items);
  }

  private Prose.Table table(TableBlock table) {
    List<List<Prose.Inline>> header = new ArrayList<>();
    List<List<List<Prose.Inline>>> rows = new ArrayList<>();
    for (Node part : table.getChildren()) {
      for (Node row : part.getChildren()) {
        if (row instanceof TableRow && part instanceof TableHead) {
          header.addAll(cells(row));
        } else if (row instanceof TableRow && !(part instanceof TableSeparator)) {
          rows.add(cells(row));
        }
      }
    }
    return new Prose.Table(place(table.getChars()), header, rows);
  }

  private List<List<Prose.Inline>> cells(Node row) {
    List<List<Prose.Inline>> cells = new ArrayList<>();
    for (Node cell : row.getChildren()) {
      if (cell instanceof TableCell) {
        cells.add(inlines(cell));
      }
    }
    return cells;
  }

  private Optional<Prose.Block> figure(FencedCodeBlock fence) {
    List<BasedSequence> lines =
        fence.getContentLines().stream().filter(line -> !line.isBlank()).toList();
    if (lines.isEmpty()) {
      findings.add(
          ReadingFaults.UNUSABLE_MARKDOWN
              .at(place(fence.getOpeningFence()), "a figure without a name")
              .help("write the figure's name on the first line of the block"));
      return Optional.empty();
    }
    List<Fact<ThingId>> about = new ArrayList<>();
    for (BasedSequence line : lines.subList(1, lines.size())) {
      Location at = place(line.trim());
      mentions.read(line.trim().toString(), at).ifPresent(id -> about.add(new Fact<>(id, at)));
    }
    return Optional.of(
        new Prose.Figure(place(lines.get(0).trim()), lines.get(0).trim().toString(), about));
  }

  private List<Prose.Inline> inlines(Node parent) {
    List<Prose.Inline> words = new ArrayList<>();
    if (entersTooDeep(parent)) {
      return words;
    }
    for (Node child : parent.getChildren()) {
      inline(child, words);
    }
    depth--;
    return joined(words);
  }

  private void inline(Node node, List<Prose.Inline> words) {
    if (node instanceof Text) {
      words.add(new Prose.Words(Escaping.unescapeString(node.getChars())));
    } else if (node instanceof TextBase) {
      words.addAll(inlines(node));
    } else if (node instanceof HtmlEntity) {
      words.add(new Prose.Words(Escaping.unescapeHtml(node.getChars())));
    } else if (node instanceof SoftLineBreak || node instanceof HardLineBreak) {
      words.add(new Prose.Words(" "));
    } else if (node instanceof StrongEmphasis) {
      words.add(new Prose.Strong(inlines(node)));
    } else if (node instanceof Emphasis) {
      words.add(new Prose.Emphasis(inlines(node)));
    } else if (node instanceof Code code) {
      words.add(new Prose.Literal(code.getText().toString().replace('\n', ' ')));
    } else if (node instanceof Link link) {
      link(link.getUrl(), inlines(link), words);
    } else if (node instanceof AutoLink link) {
      link(link.getText(), List.of(new Prose.Words(link.getText().toString())), words);
    } else if (node instanceof LinkRef reference && !reference.isDefined()) {
      refuseHalfLink(reference);
      words.add(new Prose.Words(Escaping.unescapeString(node.getChars())));
    } else if (node instanceof HtmlInlineBase) {
      refuseHtml(node);
    } else {
      refuseInline(node);
    }
  }

  /** Joins neighbouring plain words into one piece, with single spaces. */
  private static List<Prose.Inline> joined(List<Prose.Inline> pieces) {
    List<Prose.Inline> joined = new ArrayList<>();
    StringBuilder words = new StringBuilder();
    for (Prose.Inline piece : pieces) {
      if (piece instanceof Prose.Words plain) {
        words.append(plain.text());
      } else {
        closeWords(words, joined);
        joined.add(piece);
      }
    }
    closeWords(words, joined);
    return joined;
  }

  private static void closeWords(StringBuilder words, List<Prose.Inline> joined) {
    if (!words.isEmpty()) {
      joined.add(new Prose.Words(SPACES.matcher(words).replaceAll(" ")));
      words.setLength(0);
    }
  }

  private void link(BasedSequence target, List<Prose.Inline> label, List<Prose.Inline> words) {
    Location at = place(target);
    String text = Escaping.unescapeString(target).strip();
    if (label.isEmpty()) {
      findings.add(
          ReadingFaults.WRONG_LINK
              .at(at, "this link has no words to show")
              .help("write the words between the square brackets"));
      return;
    }
    if (text.startsWith("https:")) {
      webLink(text, at, label, words);
    } else if (namesKind(text) || !text.matches("(?i)([a-z][a-z0-9+.-]*:.*|.*[/#].*)?")) {
      mentions
          .read(text, at)
          .ifPresentOrElse(
              id -> words.add(new Prose.ThingLink(at, id, label)), () -> words.addAll(label));
    } else {
      words.addAll(label);
      mentionsOrAddress(text, at);
    }
  }

  private static boolean namesKind(String text) {
    int colon = text.indexOf(':');
    return colon > 0 && Kind.named(text.substring(0, colon)).isPresent();
  }

  private void mentionsOrAddress(String text, Location at) {
    boolean web = text.matches("(?i)(http|ftp|mailto|tel|file|data|javascript|vbscript):.*");
    if (text.contains(":") && !web) {
      mentions.read(text, at);
      return;
    }
    findings.add(
        ReadingFaults.WRONG_LINK
            .at(at, Quote.of(text) + " is not an address that a page may link to")
            .help("link to a thing in the form 'kind:id', or to a full https address"));
  }

  private void webLink(
      String text, Location at, List<Prose.Inline> label, List<Prose.Inline> words) {
    try {
      URI address = new URI(text);
      if (address.getHost() != null && address.getUserInfo() == null) {
        words.add(new Prose.WebLink(text, label));
        return;
      }
    } catch (URISyntaxException e) {
      // told below, in the same words
    }
    words.addAll(label);
    findings.add(
        ReadingFaults.WRONG_LINK
            .at(at, Quote.of(text) + " is not a full https address")
            .help("write the address as the browser shows it"));
  }

  /** A target with a space in it is no link to Markdown, and would stand on the page as typed. */
  private void refuseHalfLink(LinkRef words) {
    Node next = words.getNext();
    if (next != null && next.getChars().startsWith("(")) {
      findings.add(
          ReadingFaults.WRONG_LINK
              .at(place(words.getChars()), "this link is not complete")
              .help("write [words](target) without a space in the target"));
    }
  }

  private void refuseHtml(Node node) {
    findings.add(
        ReadingFaults.RAW_HTML
            .at(place(node.getChars()), "there is HTML here")
            .help("write it in Markdown; a sign '<' in a text is written '\\<'"));
  }

  private void refuseBlock(Node node) {
    findings.add(
        ReadingFaults.UNUSABLE_MARKDOWN
            .at(place(node.getChars()), name(node) + " cannot be printed here")
            .help("use paragraphs, headings, lists, tables and figures only"));
  }

  private void refuseInline(Node node) {
    findings.add(
        ReadingFaults.UNUSABLE_MARKDOWN
            .at(place(node.getChars()), name(node) + " cannot be printed here")
            .help("use plain words, bold, emphasis, code and links of the form [words](target)"));
  }

  private static String name(Node node) {
    return switch (node.getNodeName()) {
      case "BlockQuote" -> "a quotation block";
      case "ThematicBreak" -> "a line across the page";
      case "FencedCodeBlock", "IndentedCodeBlock" -> "a block of code";
      case "Image", "ImageRef" -> "a picture";
      case "MailLink" -> "a mail address as a link";
      case "LinkRef", "Reference" -> "a link by reference";
      default -> "this part of the text";
    };
  }

  /** The first line of a part. */
  private Location place(BasedSequence part) {
    return places.of(part.getStartOffset(), part.getEndOffset());
  }
}
