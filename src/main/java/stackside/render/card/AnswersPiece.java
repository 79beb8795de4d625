package stackside.render.card;

import com.lowagie.text.pdf.PdfStructureElement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.render.Ink;
import stackside.render.Shape;
import stackside.render.plan.AnswerRow;
import stackside.render.plan.Block;
import stackside.render.plan.Phrase;
import stackside.source.Problem;

/**
 * The table of answers. Over each row of values stands what it answers and what to mind, across the
 * whole width, so that neither lesions nor sites are squeezed into a column; a rule closes every
 * row.
 */
final class AnswersPiece implements Piece {

  private static final double PAD = 0.2;
  private static final double GUTTER = 2;
  private static final int COLUMNS = 5;
  private static final int SOCKET = 1;

  /** Where the columns begin, from the left edge of the table. */
  private static final double[] LEFT = {0, 27.5, 46.5, 88.5, 139.5, Setting.WIDTH + GUTTER};

  private final Setting setting;
  private final List<Paragraph> heads = new ArrayList<>();
  private final List<Row> rows = new ArrayList<>();

  /** One answer, measured. */
  private record Row(AnswerRow source, List<Paragraph> scopes, List<Paragraph> cells) {
    double scopeHeight() {
      return scopes.stream().mapToDouble(Paragraph::height).sum();
    }

    /** Where the first base line of all values is, from their top. */
    double base() {
      return cells.stream().mapToDouble(cell -> cell.base(0)).max().orElse(0);
    }

    double height() {
      double values =
          cells.stream().mapToDouble(cell -> base() - cell.base(0) + cell.height()).max().orElse(0);
      return scopeHeight() + values + 2 * PAD;
    }

    boolean withCurrent() {
      return cells.size() > 1;
    }
  }

  AnswersPiece(Block.Answers block, Setting setting) {
    this.setting = setting;
    for (int i = 0; i < block.columns().size(); i++) {
      heads.add(setting.nearBold(block.columns().get(i), width(i)));
    }
    block.rows().forEach(row -> rows.add(row(row)));
  }

  private static double width(int column) {
    return LEFT[column + 1] - LEFT[column] - GUTTER;
  }

  private Row row(AnswerRow row) {
    List<Paragraph> scopes = new ArrayList<>();
    for (AnswerRow.Scope scope : row.scopes()) {
      scopes.add(scope(scope, Optional.empty()));
    }
    row.caution().ifPresent(caution -> caution(row, caution, scopes));
    return new Row(row, scopes, cells(row.answer()));
  }

  /**
   * On a line of its own, for it holds for all scopes; behind a single one if that saves a line.
   */
  private void caution(AnswerRow row, Phrase caution, List<Paragraph> scopes) {
    Paragraph below = setting.nearBold(caution, Setting.WIDTH);
    if (row.scopes().size() == 1) {
      Paragraph behind = scope(row.scopes().get(0), Optional.of(caution));
      if (behind.height() < scopes.get(0).height() + below.height() - 0.01) {
        scopes.set(0, behind);
        return;
      }
    }
    scopes.add(below);
  }

  /**
   * Lesions and sites on one line where they fit; when to take an alternative below them, and what
   * to mind behind the last of it.
   */
  private Paragraph scope(AnswerRow.Scope scope, Optional<Phrase> caution) {
    double near = setting.scale().near();
    Run what = Run.bold(stopped(scope.what()), near);
    List<Run> rest = new ArrayList<>();
    rest.add(Run.bold(stopped(scope.where()), near));
    List<Run> last = new ArrayList<>();
    scope.alternative().map(each -> Run.regular(stopped(each), near)).ifPresent(last::add);
    caution
        .map(each -> Run.bold(each, near))
        .ifPresent(scope.alternative().isPresent() ? last::add : rest::add);
    Paragraph lines = lower(what, rest);
    return last.isEmpty() ? lines : lines.thenOnNewLine(last);
  }

  /** The rest behind the first or on a line of its own, whichever takes fewer lines. */
  private Paragraph lower(Run what, List<Run> rest) {
    List<Run> all = new ArrayList<>(rest);
    all.add(0, what);
    Paragraph running = setting.paragraph(Setting.WIDTH, all.toArray(Run[]::new));
    Paragraph broken = setting.paragraph(Setting.WIDTH, what).thenOnNewLine(rest);
    return broken.lineCount() <= running.lineCount() ? broken : running;
  }

  /** The phrase as a sentence of its own. */
  private static Phrase stopped(Phrase phrase) {
    return new Phrase(phrase.words() + ".", phrase.at());
  }

  private List<Paragraph> cells(AnswerRow.Told told) {
    if (told instanceof AnswerRow.InWords words) {
      return inWords(words.answer(), words.words());
    }
    if (told instanceof AnswerRow.Elsewhere elsewhere) {
      return inWords(elsewhere.answer(), elsewhere.words());
    }
    if (told instanceof AnswerRow.WithCurrent settings) {
      return List.of(
          program(settings.program()),
          setting.paragraph(width(1), Run.bold(settings.socket(), setting.scale().numeral())),
          instrument(settings),
          pedal(settings.yellow(), width(3)),
          pedal(settings.blue(), width(4)));
    }
    throw new IllegalStateException("an answer that nobody sets: " + told);
  }

  private List<Paragraph> inWords(Phrase answer, Phrase words) {
    return List.of(
        setting.paragraph(
            Setting.WIDTH,
            Run.bold(answer, setting.scale().near()),
            Run.regular(words, setting.scale().near())));
  }

  private Paragraph program(AnswerRow.Program program) {
    Run words = Run.regular(program.words(), setting.scale().near());
    return program
        .slot()
        .map(slot -> setting.paragraph(width(0), Run.bold(slot, setting.scale().numeral()), words))
        .orElseGet(() -> setting.paragraph(width(0), words));
  }

  private Paragraph instrument(AnswerRow.WithCurrent settings) {
    Paragraph instrument = setting.near(settings.instrument(), width(2));
    return settings
        .argonFlow()
        .map(flow -> instrument.thenOnNewLine(List.of(Run.bold(flow, setting.scale().near()))))
        .orElse(instrument);
  }

  /** The mode on a line of its own, then its level and limit. */
  private Paragraph pedal(AnswerRow.OnPedal pedal, double width) {
    Paragraph words = setting.near(pedal.mode(), width);
    List<Run> set = new ArrayList<>();
    pedal.level().ifPresent(level -> set.add(level(level, pedal.limit().isEmpty())));
    pedal.limit().ifPresent(limit -> set.add(Run.bold(limit, setting.scale().numeral())));
    return set.isEmpty() ? words : words.thenOnNewLine(set);
  }

  /** A level; large where it is the whole setting. */
  private Run level(Phrase level, boolean alone) {
    return alone
        ? Run.bold(level, setting.scale().numeral())
        : Run.bold(level, setting.scale().near());
  }

  private double headHeight() {
    return heads.stream().mapToDouble(Paragraph::height).max().orElse(0) + PAD;
  }

  @Override
  public double height() {
    return headHeight() + rows.stream().mapToDouble(Row::height).sum();
  }

  /** How high each row is, in order. */
  List<Double> rowHeights() {
    return rows.stream().map(Row::height).toList();
  }

  @Override
  public int joints() {
    return rows.size();
  }

  @Override
  public void paint(Canvas canvas, PdfStructureElement document, double y, double loose) {
    PdfStructureElement table = Canvas.element(document, "Table");
    heads(canvas, table, y);
    double top = y + headHeight();
    rule(canvas, top, 0.7);
    for (Row row : rows) {
      paint(canvas, table, row, top + PAD + loose / 2);
      top += row.height() + loose;
      rule(canvas, top, 0.35);
    }
  }

  private static void rule(Canvas canvas, double y, double width) {
    canvas.artifact(() -> canvas.line(Setting.LEFT, y, Setting.RIGHT, y, width));
  }

  private void heads(Canvas canvas, PdfStructureElement table, double y) {
    PdfStructureElement row = Canvas.element(table, "TR");
    for (int i = 0; i < heads.size(); i++) {
      Paragraph head = heads.get(i);
      double x = Setting.LEFT + LEFT[i];
      canvas.in(Canvas.columnHeader(row), () -> head.paint(canvas, x, y));
    }
  }

  private void paint(Canvas canvas, PdfStructureElement table, Row row, double y) {
    PdfStructureElement heading = Canvas.element(table, "TR");
    canvas.in(
        Canvas.wideHeader(heading, COLUMNS),
        () -> {
          double top = y;
          for (Paragraph each : row.scopes()) {
            each.paint(canvas, Setting.LEFT, top);
            top += each.height();
          }
        });
    PdfStructureElement line = Canvas.element(table, "TR");
    double top = y + row.scopeHeight();
    if (!row.withCurrent()) {
      PdfStructureElement cell = Canvas.wideCell(line, COLUMNS);
      canvas.in(cell, () -> row.cells().get(0).paint(canvas, Setting.LEFT, top));
      return;
    }
    for (int i = 0; i < row.cells().size(); i++) {
      Paragraph cell = row.cells().get(i);
      double inset = i == SOCKET ? (calloutWidth(cell) - cell.widest()) / 2 : 0;
      double x = Setting.LEFT + LEFT[i] + inset;
      double lower = top + row.base() - cell.base(0);
      canvas.in(Canvas.element(line, "TD"), () -> cell.paint(canvas, x, lower));
    }
    callout(canvas, row.cells().get(SOCKET), top + row.base());
  }

  private double calloutWidth(Paragraph socket) {
    double em = setting.scale().numeral() * Typeface.MILLIMETRES_PER_POINT;
    return Math.max(1.3 * em, socket.widest() + 0.8 * em);
  }

  /** The frame that the socket's label has on the drawing of the panel. */
  private void callout(Canvas canvas, Paragraph socket, double base) {
    double em = setting.scale().numeral() * Typeface.MILLIMETRES_PER_POINT;
    double high = 1.3 * em;
    double wide = calloutWidth(socket);
    double top = base - (setting.letters().capital() * em + high) / 2;
    Shape.Paint frame = Shape.Paint.outline(Shape.Stroke.of(Ink.INK, 0.4));
    canvas.artifact(
        () ->
            canvas.shape(
                new Shape.Rect(Setting.LEFT + LEFT[SOCKET], top, wide, high, high / 2, frame),
                0,
                0));
  }

  @Override
  public List<Problem> problems() {
    List<Problem> problems = new ArrayList<>();
    heads.forEach(head -> problems.addAll(head.problems()));
    for (Row row : rows) {
      row.scopes().forEach(each -> problems.addAll(each.problems()));
      row.cells().forEach(each -> problems.addAll(each.problems()));
    }
    return problems;
  }
}
