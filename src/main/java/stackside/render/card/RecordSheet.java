package stackside.render.card;

import com.lowagie.text.pdf.PdfStructureElement;
import java.util.ArrayList;
import java.util.List;
import stackside.derive.path.PathReading;
import stackside.model.LearningPath;
import stackside.model.Thing;
import stackside.render.Dates;
import stackside.render.Publication;
import stackside.render.Words;
import stackside.render.plan.Phrase;

/** One page of a record: what was read, in which edition, and lines for handwritten names. */
final class RecordSheet {
  static final int MOST_ROWS = 21;

  private static final double ROW = 7.6;
  private static final double GAP = 3;
  private static final double EDITION = 96;
  private static final double INITIALS = 136;
  private static final double LINE = 11;
  private static final double HALF = 98;

  private final Publication publication;
  private final LearningPath path;
  private final List<PathReading> rows;
  private final CardStyle setting;
  private final int sheet;
  private final int sheets;

  RecordSheet(
      Publication publication,
      LearningPath path,
      List<PathReading> rows,
      CardStyle setting,
      int sheet,
      int sheets) {
    this.publication = publication;
    this.path = path;
    this.rows = List.copyOf(rows);
    this.setting = setting;
    this.sheet = sheet;
    this.sheets = sheets;
  }

  private Words words() {
    return publication.words();
  }

  private String say(String key, Object... values) {
    return words().say(key, values);
  }

  /** Everything that the sheet says. */
  String said() {
    List<String> said = new ArrayList<>(List.of(path.title(), path.reader().value()));
    marks().forEach(said::add);
    rows.forEach(row -> said.add(name(row) + " " + row.edition()));
    return String.join("\n", said);
  }

  private List<String> marks() {
    List<String> marks = new ArrayList<>();
    if (publication.draft()) {
      marks.add(say("mark.draft"));
    }
    if (publication.demonstration()) {
      marks.add(say("mark.demonstration"));
    }
    return marks;
  }

  void paint(Canvas canvas, PdfStructureElement document) {
    double y = head(canvas, document);
    y = table(canvas, document, y + GAP);
    y = text(canvas, document, "P", small(say("record.declared"), CardStyle.WIDTH), y + GAP);
    y = signing(canvas, document, "record.learner", y + GAP);
    y = signing(canvas, document, "record.witness", y + GAP);
    text(canvas, document, "P", small(say("record.store"), CardStyle.WIDTH), y + GAP);
  }

  private double head(Canvas canvas, PdfStructureElement document) {
    String unit = publication.unit().details().name().value();
    double y = text(canvas, document, "H1", bold(say("record.of", path.title())), CardStyle.TOP);
    String pages = sheets == 1 ? "" : ". " + say("record.sheet", sheet, sheets);
    y =
        text(
            canvas,
            document,
            "P",
            small(unit + ". " + say("path.for", path.reader().value()) + pages, CardStyle.WIDTH),
            y + 1);
    for (String mark : marks()) {
      y = text(canvas, document, "P", smallBold(mark, CardStyle.WIDTH), y);
    }
    String made = say("record.made", Dates.day(publication.on(), words()));
    return text(canvas, document, "P", small(made, CardStyle.WIDTH), y + 1);
  }

  private double table(Canvas canvas, PdfStructureElement document, double top) {
    PdfStructureElement table = Canvas.element(document, "Table");
    PdfStructureElement head = Canvas.element(table, "TR");
    List<String> names = List.of("record.read", "record.edition", "record.initials");
    double[] left = {0, EDITION, INITIALS};
    double y = top;
    for (int i = 0; i < names.size(); i++) {
      Paragraph words = smallBold(say(names.get(i)), CardStyle.WIDTH);
      double x = CardStyle.LEFT + left[i];
      canvas.in(Canvas.columnHeader(head), () -> words.paint(canvas, x, top));
      y = top + words.height();
    }
    for (PathReading row : rows) {
      rule(canvas, y + 0.4);
      row(canvas, Canvas.element(table, "TR"), row, y);
      y += ROW;
    }
    rule(canvas, y + 0.4);
    return y;
  }

  private void row(Canvas canvas, PdfStructureElement element, PathReading row, double top) {
    Paragraph name = small(name(row), EDITION - 2);
    double lower = Math.max(0.4, (ROW - name.height()) / 2);
    canvas.in(Canvas.element(element, "TD"), () -> name.paint(canvas, CardStyle.LEFT, top + lower));
    Paragraph edition = small(row.edition(), INITIALS - EDITION - 2);
    double middle = (ROW - edition.height()) / 2;
    canvas.in(
        Canvas.element(element, "TD"),
        () -> edition.paint(canvas, CardStyle.LEFT + EDITION, top + middle));
    Canvas.element(element, "TD");
  }

  private String name(PathReading row) {
    return say("kind." + row.id().kind().word())
        + ": "
        + row.thing().map(Thing::title).orElse(row.id().slug());
  }

  /** Draws a person's function, and lines for name, signature and date. */
  private double signing(Canvas canvas, PdfStructureElement document, String who, double top) {
    double y = text(canvas, document, "P", smallBold(say(who), CardStyle.WIDTH), top) + LINE - 3;
    field(canvas, document, "record.name", CardStyle.LEFT, HALF - 4, y);
    field(canvas, document, "record.signature", CardStyle.LEFT + HALF, 58, y);
    return field(canvas, document, "record.day", CardStyle.LEFT + HALF + 61, 31, y);
  }

  private double field(
      Canvas canvas, PdfStructureElement document, String key, double x, double wide, double y) {
    canvas.artifact(() -> canvas.line(x, y, x + wide, y, 0.35));
    Paragraph words = small(say(key), wide);
    canvas.in(Canvas.element(document, "P"), () -> words.paint(canvas, x, y));
    return y + words.height();
  }

  private static void rule(Canvas canvas, double y) {
    canvas.artifact(() -> canvas.line(CardStyle.LEFT, y, CardStyle.RIGHT, y, 0.25));
  }

  private static double text(
      Canvas canvas, PdfStructureElement document, String role, Paragraph words, double y) {
    canvas.in(Canvas.element(document, role), () -> words.paint(canvas, CardStyle.LEFT, y));
    return y + words.height();
  }

  private Paragraph bold(String words) {
    return setting.heading(printable(words), CardStyle.WIDTH);
  }

  private Paragraph small(String words, double width) {
    return setting.small(printable(words), width);
  }

  private Paragraph smallBold(String words, double width) {
    return setting.paragraph(width, Run.bold(printable(words), setting.scale().small()));
  }

  /** Replaces letters that the typeface lacks with a question mark; none is left out. */
  private Phrase printable(String words) {
    String missing = setting.typeface().missing(words);
    StringBuilder printable = new StringBuilder();
    words
        .codePoints()
        .map(letter -> missing.indexOf(letter) < 0 ? letter : '?')
        .forEach(printable::appendCodePoint);
    return new Phrase(printable.toString(), path.at());
  }
}
