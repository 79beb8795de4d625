package stackside.render.card;

import com.lowagie.text.pdf.PdfStructureElement;
import java.util.List;
import stackside.render.plan.CardPlan;
import stackside.render.plan.Phrase;
import stackside.source.Problem;

/** The page that replaces a card that cannot be printed: which card it is, and why. */
final class UnprintableCard {

  private static final double ENOUGH = 250;

  private final CardPlan plan;
  private final List<Problem> problems;
  private final CardStyle setting;

  UnprintableCard(CardPlan plan, List<Problem> problems, CardStyle setting) {
    this.plan = plan;
    this.problems = problems;
    this.setting = setting;
  }

  void paint(Canvas canvas, PdfStructureElement document) {
    PdfStructureElement heading = Canvas.element(document, "H1");
    Phrase name = new Phrase(plan.room().title() + ", " + plan.asset().title(), plan.room().at());
    Phrase title =
        new Phrase(plan.title() + ": this card cannot be printed yet.", plan.room().at());
    double y = paint(canvas, heading, setting.far(printable(name), CardStyle.WIDTH), CardStyle.TOP);
    y = paint(canvas, heading, setting.heading(printable(title), CardStyle.WIDTH), y);
    for (Problem problem : problems) {
      if (y < ENOUGH) {
        Phrase words = new Phrase(problem.message() + ".", problem.at());
        PdfStructureElement paragraph = Canvas.element(document, "P");
        y = paint(canvas, paragraph, setting.near(printable(words), CardStyle.WIDTH), y + 3);
      }
    }
  }

  /** The phrase without the letters that are the problem. */
  private Phrase printable(Phrase phrase) {
    String missing = setting.typeface().missing(phrase.words());
    StringBuilder kept = new StringBuilder();
    phrase
        .words()
        .codePoints()
        .filter(letter -> missing.indexOf(letter) < 0)
        .forEach(kept::appendCodePoint);
    return new Phrase(kept.toString(), phrase.at());
  }

  private static double paint(
      Canvas canvas, PdfStructureElement element, Paragraph paragraph, double y) {
    canvas.in(element, () -> paragraph.paint(canvas, CardStyle.LEFT, y));
    return y + paragraph.height();
  }
}
