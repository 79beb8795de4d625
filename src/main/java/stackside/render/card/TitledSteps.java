package stackside.render.card;

import com.lowagie.text.pdf.PdfStructureElement;
import java.util.ArrayList;
import java.util.List;
import stackside.render.plan.Block;
import stackside.source.Problem;

/** Steps under a title: the set-up list, or a drill with its sign and what never to do. */
final class TitledSteps implements CardElement {

  private static final double GAP = 6;

  /** The least width that words beside a title need. */
  private static final double LEAST_BESIDE = 70;

  private final Paragraph title;
  private final List<Paragraph> remarks;
  private final boolean beside;
  private final StepsElement steps;

  private TitledSteps(Paragraph title, List<Paragraph> remarks, boolean beside, StepsElement steps) {
    this.title = title;
    this.remarks = remarks;
    this.beside = beside;
    this.steps = steps;
  }

  static TitledSteps setUp(Block.SetUp block, CardStyle setting) {
    return new TitledSteps(
        setting.heading(block.heading(), CardStyle.WIDTH),
        List.of(),
        false,
        new StepsElement(block.steps(), setting));
  }

  /** A drill. Sign and warning go beside the title if it leaves enough room. */
  static TitledSteps drill(Block.Drilled block, CardStyle setting) {
    Paragraph title = setting.far(block.title(), CardStyle.WIDTH);
    double rest = CardStyle.WIDTH - title.widest() - GAP;
    boolean beside = title.lineCount() == 1 && rest >= LEAST_BESIDE;
    double width = beside ? rest : CardStyle.WIDTH;
    List<Paragraph> remarks = new ArrayList<>();
    remarks.add(setting.near(block.sign(), width));
    block.never().ifPresent(never -> remarks.add(setting.nearBold(never, width)));
    return new TitledSteps(title, remarks, beside, new StepsElement(block.steps(), setting));
  }

  private double remarksHeight() {
    return remarks.stream().mapToDouble(Paragraph::height).sum();
  }

  private double head() {
    return beside ? Math.max(title.height(), remarksHeight()) : title.height() + remarksHeight();
  }

  @Override
  public double height() {
    return head() + steps.height();
  }

  @Override
  public int joints() {
    return steps.joints();
  }

  @Override
  public void paint(Canvas canvas, PdfStructureElement document, double y, double loose) {
    canvas.in(Canvas.element(document, "H2"), () -> title.paint(canvas, CardStyle.LEFT, y));
    double x = beside ? CardStyle.LEFT + title.widest() + GAP : CardStyle.LEFT;
    double top = beside ? y + (head() - remarksHeight()) / 2 : y + title.height();
    for (Paragraph remark : remarks) {
      double at = top;
      canvas.in(Canvas.element(document, "P"), () -> remark.paint(canvas, x, at));
      top += remark.height();
    }
    steps.paint(canvas, document, y + head(), loose);
  }

  @Override
  public List<Problem> problems() {
    List<Problem> problems = new ArrayList<>(title.problems());
    remarks.forEach(each -> problems.addAll(each.problems()));
    problems.addAll(steps.problems());
    return problems;
  }
}
