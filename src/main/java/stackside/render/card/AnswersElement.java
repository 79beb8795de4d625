package stackside.render.card;

import com.lowagie.text.pdf.PdfStructureElement;
import java.util.ArrayList;
import java.util.List;
import stackside.render.Ink;
import stackside.render.Shape;
import stackside.render.plan.AnswerRow;
import stackside.render.plan.Block;
import stackside.render.plan.Phrase;
import stackside.source.Problem;

/**
 * The table of answers. Above each row of values, across the full width, is what the row answers
 * and what to watch for, so that neither lesions nor sites are squeezed into a column. A rule ends
 * every row.
 */
final class AnswersElement implements CardElement {

  private static final double PAD = 0.2;
  private static final double GUTTER = 2;
  private static final int SOCKET = 1;

  /** Number of columns before those of the pedals. */
  private static final int PEDALS = 3;

  private final CardStyle setting;
  private final Refusal refusal;

  /**
   * Where the columns begin, measured from the left edge of the table; the last entry is where
   * another would begin.
   */
  private final List<Double> left;

  private final List<Paragraph> heads = new ArrayList<>();
  private final List<MeasuredAnswer> rows = new ArrayList<>();

  /** One measured answer. */
  private record MeasuredAnswer(AnswerRow source, List<Paragraph> scopes, List<Paragraph> cells) {
    double scopeHeight() {
      return scopes.stream().mapToDouble(Paragraph::height).sum();
    }

    /** The first base line shared by all values, measured from their top. */
    double base() {
      return cells.stream().mapToDouble(cell -> cell.base(0)).max().orElse(0);
    }

    double valuesHeight() {
      return cells.stream()
          .mapToDouble(cell -> base() - cell.base(0) + cell.height())
          .max()
          .orElse(0);
    }

    double height() {
      return scopeHeight() + valuesHeight() + 2 * PAD;
    }

    boolean withCurrent() {
      return cells.size() > 1;
    }

    /** Whether the row says that nothing may be set here. */
    boolean refuses() {
      return source.answer() instanceof AnswerRow.InWords words
          && words.means() != AnswerRow.Means.COLD;
    }

    /** Whether a cell says that its pedal must not be used. */
    boolean forbids(int column) {
      return column >= PEDALS
          && source.answer() instanceof AnswerRow.WithCurrent settings
          && settings.pedals().get(column - PEDALS).pressing() == AnswerRow.Pressing.FORBIDDEN;
    }
  }

  AnswersElement(Block.Answers block, CardStyle setting) {
    this.setting = setting;
    this.refusal = new Refusal(setting);
    this.left = left(block.columns().size() - PEDALS);
    for (int i = 0; i < block.columns().size(); i++) {
      heads.add(setting.nearBold(block.columns().get(i), width(i)));
    }
    block.rows().forEach(row -> rows.add(row(row)));
  }

  /** A single pedal leaves more room for the instrument. */
  private static List<Double> left(int pedals) {
    double end = CardStyle.WIDTH + GUTTER;
    return switch (pedals) {
      case 0 -> List.of(0.0, 27.5, 46.5, end);
      case 1 -> List.of(0.0, 27.5, 46.5, 110.0, end);
      default -> List.of(0.0, 27.5, 46.5, 88.5, 139.5, end);
    };
  }

  private double width(int column) {
    return left.get(column + 1) - left.get(column) - GUTTER;
  }

  private MeasuredAnswer row(AnswerRow row) {
    List<Paragraph> scopes = new ArrayList<>();
    for (AnswerRow.Scope scope : row.scopes()) {
      scopes.add(scope(scope, List.of()));
    }
    if (!row.cautions().isEmpty()) {
      cautions(row, scopes);
    }
    return new MeasuredAnswer(row, scopes, cells(row.answer()));
  }

  /**
   * Puts the cautions on their own line, because they apply to all scopes; if there is only one
   * scope, they follow it when that saves a line.
   */
  private void cautions(AnswerRow row, List<Paragraph> scopes) {
    List<Run> cautions =
        row.cautions().stream().map(each -> Run.bold(each, setting.scale().near())).toList();
    Paragraph below = setting.paragraph(CardStyle.WIDTH, cautions.toArray(Run[]::new));
    if (row.scopes().size() == 1) {
      Paragraph behind = scope(row.scopes().get(0), cautions);
      if (behind.height() < scopes.get(0).height() + below.height() - 0.01) {
        scopes.set(0, behind);
        return;
      }
    }
    scopes.add(below);
  }

  /**
   * Puts lesions and sites on one line if they fit. When to use an alternative goes below them, and
   * the cautions follow the last of it.
   */
  private Paragraph scope(AnswerRow.Scope scope, List<Run> cautions) {
    double near = setting.scale().near();
    Run what = Run.bold(stopped(scope.what()), near);
    List<Run> rest = new ArrayList<>();
    rest.add(Run.bold(stopped(scope.where()), near));
    List<Run> last = new ArrayList<>();
    scope.alternative().map(each -> Run.regular(stopped(each), near)).ifPresent(last::add);
    (last.isEmpty() ? rest : last).addAll(cautions);
    Paragraph lines = lower(what, rest);
    return last.isEmpty() ? lines : lines.thenOnNewLine(last);
  }

  /** Puts the rest after the first run or on its own line, whichever takes fewer lines. */
  private Paragraph lower(Run what, List<Run> rest) {
    List<Run> all = new ArrayList<>(rest);
    all.add(0, what);
    Paragraph running = setting.paragraph(CardStyle.WIDTH, all.toArray(Run[]::new));
    Paragraph broken = setting.paragraph(CardStyle.WIDTH, what).thenOnNewLine(rest);
    return broken.lineCount() <= running.lineCount() ? broken : running;
  }

  /** The phrase as a separate sentence. */
  private static Phrase stopped(Phrase phrase) {
    return new Phrase(phrase.words() + ".", phrase.at());
  }

  private List<Paragraph> cells(AnswerRow.Told told) {
    if (told instanceof AnswerRow.InWords words) {
      return List.of(inWords(words));
    }
    if (told instanceof AnswerRow.WithCurrent settings) {
      List<Paragraph> cells = new ArrayList<>();
      cells.add(program(settings.program()));
      cells.add(
          setting.paragraph(width(1), Run.bold(settings.socket(), setting.scale().numeral())));
      cells.add(instrument(settings));
      settings.pedals().forEach(pedal -> cells.add(pedal(pedal, width(cells.size()))));
      return cells;
    }
    throw new IllegalStateException("unknown answer: " + told);
  }

  private Paragraph inWords(AnswerRow.InWords words) {
    double room = CardStyle.WIDTH - (words.means() == AnswerRow.Means.COLD ? 0 : refusal.room());
    return setting.paragraph(
        room,
        Run.bold(words.answer(), setting.scale().near()),
        Run.regular(words.words(), setting.scale().near()));
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

  /** The mode on its own line, then its level and limit. */
  private Paragraph pedal(AnswerRow.OnPedal pedal, double width) {
    if (pedal.pressing() == AnswerRow.Pressing.FORBIDDEN) {
      return setting.nearBold(pedal.mode(), width - refusal.room());
    }
    Paragraph words = setting.near(pedal.mode(), width);
    List<Run> set = new ArrayList<>();
    pedal.level().ifPresent(level -> set.add(level(level, pedal.limit().isEmpty())));
    pedal.limit().ifPresent(limit -> set.add(Run.bold(limit, setting.scale().numeral())));
    return set.isEmpty() ? words : words.thenOnNewLine(set);
  }

  /** A level, large if it is the whole setting. */
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
    return headHeight() + rows.stream().mapToDouble(MeasuredAnswer::height).sum();
  }

  /** The height of each row, in order. */
  List<Double> rowHeights() {
    return rows.stream().map(MeasuredAnswer::height).toList();
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
    for (MeasuredAnswer row : rows) {
      if (row.refuses()) {
        refusal.ground(canvas, CardStyle.LEFT, top, CardStyle.WIDTH, row.height() + loose);
      }
      paint(canvas, table, row, top + PAD + loose / 2);
      top += row.height() + loose;
      rule(canvas, top, 0.35);
    }
  }

  private static void rule(Canvas canvas, double y, double width) {
    canvas.artifact(() -> canvas.line(CardStyle.LEFT, y, CardStyle.RIGHT, y, width));
  }

  private void heads(Canvas canvas, PdfStructureElement table, double y) {
    PdfStructureElement row = Canvas.element(table, "TR");
    for (int i = 0; i < heads.size(); i++) {
      Paragraph head = heads.get(i);
      double x = CardStyle.LEFT + left.get(i);
      canvas.in(Canvas.columnHeader(row), () -> head.paint(canvas, x, y));
    }
  }

  private void paint(Canvas canvas, PdfStructureElement table, MeasuredAnswer row, double y) {
    PdfStructureElement heading = Canvas.element(table, "TR");
    canvas.in(
        Canvas.wideHeader(heading, heads.size()),
        () -> {
          double top = y;
          for (Paragraph each : row.scopes()) {
            each.paint(canvas, CardStyle.LEFT, top);
            top += each.height();
          }
        });
    PdfStructureElement line = Canvas.element(table, "TR");
    double top = y + row.scopeHeight();
    if (!row.withCurrent()) {
      PdfStructureElement cell = Canvas.wideCell(line, heads.size());
      Paragraph words = row.cells().get(0);
      double x =
          CardStyle.LEFT + (row.refuses() ? refusal.cross(canvas, CardStyle.LEFT, top, words) : 0);
      canvas.in(cell, () -> words.paint(canvas, x, top));
      return;
    }
    for (int i = 0; i < row.cells().size(); i++) {
      Paragraph cell = row.cells().get(i);
      double lower = top + row.base() - cell.base(0);
      double x = CardStyle.LEFT + left.get(i) + inset(canvas, row, i, top, lower);
      canvas.in(Canvas.element(line, "TD"), () -> cell.paint(canvas, x, lower));
    }
    callout(canvas, row.cells().get(SOCKET), top + row.base());
  }

  /** The left inset of a cell's words; also draws the sign that forbids a pedal. */
  private double inset(Canvas canvas, MeasuredAnswer row, int column, double top, double lower) {
    Paragraph cell = row.cells().get(column);
    if (row.forbids(column)) {
      double x = CardStyle.LEFT + left.get(column);
      refusal.ground(canvas, x - GUTTER / 2, top, width(column) + GUTTER / 2, row.valuesHeight());
      return refusal.cross(canvas, x, lower, cell);
    }
    return column == SOCKET ? (calloutWidth(cell) - cell.widest()) / 2 : 0;
  }

  private double calloutWidth(Paragraph socket) {
    double em = setting.scale().numeral() * Typeface.MILLIMETRES_PER_POINT;
    return Math.max(1.3 * em, socket.widest() + 0.8 * em);
  }

  /** Draws the frame that the socket's label has on the drawing of the panel. */
  private void callout(Canvas canvas, Paragraph socket, double base) {
    double em = setting.scale().numeral() * Typeface.MILLIMETRES_PER_POINT;
    double high = 1.3 * em;
    double wide = calloutWidth(socket);
    double top = base - (setting.letters().capital() * em + high) / 2;
    Shape.Paint frame = Shape.Paint.outline(Shape.Stroke.of(Ink.INK, 0.4));
    canvas.artifact(
        () ->
            canvas.shape(
                new Shape.Rect(CardStyle.LEFT + left.get(SOCKET), top, wide, high, high / 2, frame),
                0,
                0));
  }

  @Override
  public List<Problem> problems() {
    List<Problem> problems = new ArrayList<>();
    heads.forEach(head -> problems.addAll(head.problems()));
    for (MeasuredAnswer row : rows) {
      row.scopes().forEach(each -> problems.addAll(each.problems()));
      row.cells().forEach(each -> problems.addAll(each.problems()));
    }
    return problems;
  }
}
