package stackside.render.card;

import com.lowagie.text.pdf.PdfStructureElement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.render.plan.Block;
import stackside.source.Problem;

/** Steps under a title: the set-up list, or a drill with its sign and what never to do. */
final class TitledSteps implements Piece {

  private static final double GAP = 6;

  private final Paragraph title;
  private final Optional<Paragraph> sign;
  private final Optional<Paragraph> never;
  private final StepsPiece steps;

  private TitledSteps(
      Paragraph title, Optional<Paragraph> sign, Optional<Paragraph> never, StepsPiece steps) {
    this.title = title;
    this.sign = sign;
    this.never = never;
    this.steps = steps;
  }

  static TitledSteps setUp(Block.SetUp block, Setting setting) {
    return new TitledSteps(
        setting.heading(block.heading(), Setting.WIDTH),
        Optional.empty(),
        Optional.empty(),
        new StepsPiece(block.steps(), setting));
  }

  static TitledSteps drill(Block.Drilled block, Setting setting) {
    Paragraph title = setting.far(block.title(), Setting.WIDTH);
    double rest = Setting.WIDTH - title.widest() - GAP;
    double beside = rest < 60 ? Setting.WIDTH : rest;
    return new TitledSteps(
        title,
        Optional.of(setting.near(block.sign(), beside)),
        block.never().map(never -> setting.nearBold(never, Setting.WIDTH)),
        new StepsPiece(block.steps(), setting));
  }

  private boolean signBeside() {
    return sign.isPresent()
        && title.lineCount() == 1
        && title.widest() + GAP + sign.get().widest() <= Setting.WIDTH + 0.01;
  }

  private double head() {
    double below = sign.map(Paragraph::height).orElse(0.0);
    return signBeside() ? Math.max(title.height(), below) : title.height() + below;
  }

  @Override
  public double height() {
    return head() + never.map(Paragraph::height).orElse(0.0) + steps.height();
  }

  @Override
  public void paint(Canvas canvas, PdfStructureElement document, double y) {
    canvas.in(Canvas.element(document, "H2"), () -> title.paint(canvas, Setting.LEFT, y));
    sign.ifPresent(each -> sign(canvas, document, each, y));
    double below = y + head();
    never.ifPresent(
        each ->
            canvas.in(
                Canvas.element(document, "P"), () -> each.paint(canvas, Setting.LEFT, below)));
    steps.paint(canvas, document, below + never.map(Paragraph::height).orElse(0.0));
  }

  private void sign(Canvas canvas, PdfStructureElement document, Paragraph words, double y) {
    boolean beside = signBeside();
    double x = beside ? Setting.LEFT + title.widest() + GAP : Setting.LEFT;
    double top =
        beside && words.lineCount() == 1
            ? y + title.base(0) - words.base(0)
            : beside ? y + (head() - words.height()) / 2 : y + title.height();
    canvas.in(Canvas.element(document, "P"), () -> words.paint(canvas, x, top));
  }

  @Override
  public List<Problem> problems() {
    List<Problem> problems = new ArrayList<>(title.problems());
    sign.ifPresent(each -> problems.addAll(each.problems()));
    never.ifPresent(each -> problems.addAll(each.problems()));
    problems.addAll(steps.problems());
    return problems;
  }
}
