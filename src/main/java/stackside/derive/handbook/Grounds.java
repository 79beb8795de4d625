package stackside.derive.handbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stackside.model.HandbookPage;
import stackside.model.Kind;
import stackside.model.Prose;
import stackside.model.ThingId;
import stackside.source.Location;

/**
 * What a page of the handbook rests on. Its last block may be a table of claims: the number of a
 * note, what is claimed, the source, and who says otherwise. A paragraph ends in the numbers of its
 * notes, {@code [1, 2]}, or in a mark in emphasis, such as <em>common practice, no source</em>.
 *
 * @param body the page without its table of claims
 * @param claims in the order of the table
 * @param groundless the places of paragraphs, items and tables without note and mark
 * @param notes the numbers that stand in the text
 */
public record Grounds(
    List<Prose.Block> body, List<Claim> claims, List<Location> groundless, Set<Integer> notes) {

  /** A note as it stands in the text. */
  public static final Pattern NOTE = Pattern.compile("\\[(\\d{1,3}(?:, \\d{1,3})*)]");

  private static final Pattern AT_END = Pattern.compile(NOTE + "\\s*$");
  private static final Set<String> MARKS =
      Set.of("common practice, no source", "the unit's own", "not known");

  public Grounds {
    body = List.copyOf(body);
    claims = List.copyOf(claims);
    groundless = List.copyOf(groundless);
    notes = Set.copyOf(notes);
  }

  /** The grounds of a page. */
  public static Grounds of(HandbookPage page) {
    List<Prose.Block> body = new ArrayList<>(page.text().blocks());
    List<Claim> claims = new ArrayList<>();
    int last = body.size() - 1;
    if (last >= 0 && body.get(last) instanceof Prose.Table table && holdsClaims(table)) {
      table.rows().forEach(row -> claims.add(claim(row, table)));
      body.remove(last);
      if (last > 0 && body.get(last - 1) instanceof Prose.Heading) {
        body.remove(last - 1);
      }
    }
    Set<Integer> notes = new TreeSet<>();
    Matcher found = NOTE.matcher(new Prose(page.at(), body).plain());
    while (found.find()) {
      Stream.of(found.group(1).split(", ")).map(Integer::valueOf).forEach(notes::add);
    }
    return new Grounds(body, claims, groundless(body, page), notes);
  }

  private static boolean holdsClaims(Prose.Table table) {
    return table.header().size() == 4
        && !table.rows().isEmpty()
        && table.rows().stream().allMatch(row -> words(row, 0, table).plain().matches("\\d{1,3}"));
  }

  private static Claim claim(List<List<Prose.Inline>> row, Prose.Table table) {
    List<ThingId> sources =
        words(row, 2, table).links().stream()
            .map(Prose.ThingLink::target)
            .filter(id -> id.kind() == Kind.CITATION)
            .distinct()
            .toList();
    return new Claim(
        Integer.parseInt(words(row, 0, table).plain()),
        words(row, 1, table),
        sources,
        words(row, 3, table));
  }

  private static Prose words(List<List<Prose.Inline>> row, int cell, Prose.Table table) {
    List<Prose.Inline> words = cell < row.size() ? row.get(cell) : List.of();
    return new Prose(table.at(), List.of(new Prose.Paragraph(table.at(), words)));
  }

  private static List<Location> groundless(List<Prose.Block> body, HandbookPage page) {
    List<Location> places = new ArrayList<>();
    for (int i = 0; i < body.size(); i++) {
      Optional<Prose.Block> next =
          i + 1 < body.size() ? Optional.of(body.get(i + 1)) : Optional.empty();
      paragraph(body.get(i), next.filter(Grounds::isListed).isPresent(), places);
      if (next.filter(Grounds::isOnlyAMark).isEmpty()) {
        items(body.get(i), page.at(), places);
        table(body.get(i), places);
      }
    }
    return places;
  }

  private static void paragraph(Prose.Block block, boolean beforeAList, List<Location> places) {
    if (block instanceof Prose.Paragraph paragraph
        && !isGrounded(paragraph)
        && !(beforeAList && plain(paragraph).endsWith(":"))) {
      places.add(paragraph.at());
    }
  }

  private static void items(Prose.Block block, Location page, List<Location> places) {
    if (block instanceof Prose.Items items) {
      items.items().forEach(item -> groundless(item, page, places));
    }
  }

  private static void table(Prose.Block block, List<Location> places) {
    if (block instanceof Prose.Table table && !isGrounded(table)) {
      places.add(table.at());
    }
  }

  private static boolean isListed(Prose.Block block) {
    return List.of(Prose.Items.class, Prose.Table.class).contains(block.getClass());
  }

  /** The last paragraph of an item speaks for all of it. */
  private static void groundless(List<Prose.Block> item, Location page, List<Location> places) {
    List<Prose.Paragraph> paragraphs =
        item.stream()
            .filter(Prose.Paragraph.class::isInstance)
            .map(Prose.Paragraph.class::cast)
            .toList();
    if (paragraphs.isEmpty()) {
      places.add(page);
    } else if (!isGrounded(paragraphs.get(paragraphs.size() - 1))) {
      places.add(paragraphs.get(0).at());
    }
  }

  /** Whether a paragraph ends in a note or a mark, or only asks. */
  private static boolean isGrounded(Prose.Paragraph paragraph) {
    String text = plain(paragraph);
    return AT_END.matcher(text).find() || text.endsWith("?") || endsInAMark(paragraph);
  }

  /** Whether the last cell of each row ends in a note or a mark. */
  private static boolean isGrounded(Prose.Table table) {
    return table.rows().stream()
        .filter(row -> !row.isEmpty())
        .allMatch(row -> isGrounded(new Prose.Paragraph(table.at(), row.get(row.size() - 1))));
  }

  private static boolean endsInAMark(Prose.Paragraph paragraph) {
    List<Prose.Inline> words = paragraph.words();
    return !words.isEmpty()
        && words.get(words.size() - 1) instanceof Prose.Emphasis last
        && isMark(last);
  }

  /** Whether emphasised words say how a paragraph is known. */
  public static boolean isMark(Prose.Emphasis emphasis) {
    String words = Prose.plain(emphasis.words()).strip();
    return MARKS.contains(words.toLowerCase(Locale.ROOT).replaceFirst("\\.$", ""));
  }

  /** A line with nothing but a note or a mark covers the list or the table above it. */
  private static boolean isOnlyAMark(Prose.Block block) {
    return block instanceof Prose.Paragraph paragraph
        && ((paragraph.words().size() == 1 && endsInAMark(paragraph))
            || NOTE.matcher(plain(paragraph)).matches());
  }

  private static String plain(Prose.Paragraph paragraph) {
    return Prose.plain(paragraph.words()).strip();
  }
}
