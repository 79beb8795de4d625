package stackside.render.card;

import com.lowagie.text.pdf.PdfStructureElement;
import java.util.ArrayList;
import java.util.List;
import stackside.render.plan.AnswerRow;
import stackside.render.plan.Block;
import stackside.render.plan.Phrase;
import stackside.source.Problem;

/**
 * The table of answers. Over each row of values stands what it answers, across the whole width, so
 * that neither lesions nor sites are squeezed into a column; a rule closes every row.
 */
final class AnswersPiece implements Piece {

  private static final double PAD = 0.8;
  private static final double GUTTER = 2;
  private static final int COLUMNS = 5;

  /** Where the columns begin, from the left edge of the table. */
  private static final double[] LEFT = {0, 29, 48, 85, 137, Setting.WIDTH + GUTTER};

  private final Setting setting;
  private final List<Paragraph> heads = new ArrayList<>();
  private final List<Row> rows = new ArrayList<>();

  /** One answer, measured. */
  private record Row(AnswerRow source, List<Paragraph> scopes, List<Paragraph> cells) {
    double scopeHeight() {
      return scopes.stream().mapToDouble(Paragraph::height).sum();
    }

    double height() {
      return scopeHeight()
          + cells.stream().mapToDouble(Paragraph::height).max().orElse(0)
          + 2 * PAD;
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
    List<Paragraph> scopes = row.scopes().stream().map(this::scope).toList();
    return new Row(row, scopes, cells(row.answer()));
  }

  private Paragraph scope(AnswerRow.Scope scope) {
    List<Run> runs = new ArrayList<>();
    runs.add(Run.bold(stopped(scope.what()), setting.scale().near()));
    runs.add(Run.regular(stopped(scope.where()), setting.scale().near()));
    scope
        .alternative()
        .ifPresent(each -> runs.add(Run.regular(stopped(each), setting.scale().near())));
    return setting.paragraph(Setting.WIDTH, runs.toArray(Run[]::new));
  }

  /** The phrase as a sentence of its own. */
  private static Phrase stopped(Phrase phrase) {
    return new Phrase(phrase.words() + ".", phrase.at());
  }

  private List<Paragraph> cells(AnswerRow.Told told) {
    if (told instanceof AnswerRow.InWords words) {
      return List.of(
          setting.paragraph(
              Setting.WIDTH,
              Run.bold(words.answer(), setting.scale().near()),
              Run.regular(words.words(), setting.scale().near())));
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

  private Paragraph program(AnswerRow.Program program) {
    Run words = Run.regular(program.words(), setting.scale().near());
    return program
        .slot()
        .map(slot -> setting.paragraph(width(0), Run.bold(slot, setting.scale().numeral()), words))
        .orElseGet(() -> setting.paragraph(width(0), words));
  }

  private Paragraph instrument(AnswerRow.WithCurrent settings) {
    Run instrument = Run.regular(settings.instrument(), setting.scale().near());
    return settings
        .argonFlow()
        .map(
            flow -> setting.paragraph(width(2), instrument, Run.bold(flow, setting.scale().near())))
        .orElseGet(() -> setting.paragraph(width(2), instrument));
  }

  /** The mode on a line of its own, then its level and limit. */
  private Paragraph pedal(AnswerRow.OnPedal pedal, double width) {
    Paragraph words = setting.near(pedal.mode(), width);
    List<Run> set = new ArrayList<>();
    pedal.level().ifPresent(level -> set.add(Run.regular(level, setting.scale().near())));
    pedal.limit().ifPresent(limit -> set.add(Run.bold(limit, setting.scale().numeral())));
    return set.isEmpty() ? words : words.thenOnNewLine(set);
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
  public void paint(Canvas canvas, PdfStructureElement document, double y) {
    PdfStructureElement table = Canvas.element(document, "Table");
    heads(canvas, table, y);
    double top = y + headHeight();
    rule(canvas, top, 0.7);
    for (Row row : rows) {
      paint(canvas, table, row, top + PAD);
      top += row.height();
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
      canvas.in(Canvas.header(row, "Column"), () -> head.paint(canvas, x, y));
    }
  }

  private void paint(Canvas canvas, PdfStructureElement table, Row row, double y) {
    PdfStructureElement line = Canvas.element(table, "TR");
    PdfStructureElement scope = Canvas.element(line, "TD");
    canvas.in(
        scope,
        () -> {
          double top = y;
          for (Paragraph each : row.scopes()) {
            each.paint(canvas, Setting.LEFT, top);
            top += each.height();
          }
        });
    double top = y + row.scopeHeight();
    if (!row.withCurrent()) {
      PdfStructureElement cell = Canvas.wideCell(line, COLUMNS);
      canvas.in(cell, () -> row.cells().get(0).paint(canvas, Setting.LEFT, top));
      return;
    }
    for (int i = 0; i < row.cells().size(); i++) {
      Paragraph cell = row.cells().get(i);
      double x = Setting.LEFT + LEFT[i];
      canvas.in(Canvas.element(line, "TD"), () -> cell.paint(canvas, x, top));
    }
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
