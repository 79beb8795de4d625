package stackside.render.card;

import com.lowagie.text.pdf.PdfStructureElement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.render.plan.Block;
import stackside.render.plan.CardPlan;
import stackside.source.Problem;

/**
 * The blocks of one card, measured and placed. Identity and make-safe band are placed from the top;
 * contacts, footer and code from the bottom. Their places depend only on the location and the
 * edition. Everything else goes in between.
 */
final class CardPage {

  private static final double GAP = 2;
  private static final double MOST_GAP = 8;
  private static final double MOST_LOOSE = 3;

  private final CardPlan plan;
  private final List<CardElement> top = new ArrayList<>();
  private final List<CardElement> body = new ArrayList<>();
  private final ContactsElement contacts;
  private final FooterElement footer;
  private final CodeElement code;

  CardPage(CardPlan plan, CardStyle setting) {
    this.plan = plan;
    this.code = new CodeElement(only(Block.Code.class));
    double left = CardStyle.WIDTH - code.width() - code.quiet();
    this.contacts = new ContactsElement(only(Block.Contacts.class), setting, left);
    this.footer = new FooterElement(only(Block.Footer.class), only(Block.Code.class), setting, left);
    plan.blocks().forEach(block -> place(block, setting));
  }

  private <B extends Block> B only(Class<B> kind) {
    List<B> blocks = plan.blocks(kind);
    if (blocks.size() != 1) {
      throw new IllegalStateException(plan.name() + " has " + blocks.size() + " of " + kind);
    }
    return blocks.get(0);
  }

  private void place(Block block, CardStyle setting) {
    if (block instanceof Block.Identity identity) {
      top.add(new IdentityElement(identity, setting));
    } else if (block instanceof Block.Marks marks) {
      top.add(BandElement.marks(marks, setting));
    } else if (block instanceof Block.MakeSafe makeSafe) {
      top.add(BandElement.makeSafe(makeSafe, setting));
    } else if (block instanceof Block.Maps maps) {
      body.add(new MapsElement(maps));
    } else if (block instanceof Block.Answers answers) {
      body.add(new AnswersElement(answers, setting));
    } else if (block instanceof Block.SetUp setUp) {
      body.add(TitledSteps.setUp(setUp, setting));
    } else if (block instanceof Block.Drilled drill) {
      body.add(TitledSteps.drill(drill, setting));
    } else if (!(block instanceof Block.Contacts
        || block instanceof Block.Footer
        || block instanceof Block.Code)) {
      throw new IllegalStateException("a block that no piece prints: " + block);
    }
  }

  private static double height(List<? extends CardElement> pieces) {
    return pieces.stream().mapToDouble(CardElement::height).sum();
  }

  private double bodyTop() {
    return CardStyle.TOP + height(top) + GAP * top.size();
  }

  private double footTop() {
    double left = contacts.height() + footer.height();
    return CardStyle.BOTTOM - Math.max(left, code.height() + code.quiet());
  }

  /** By how many millimetres the body is too high; negative if there is space left. */
  double overflow() {
    return height(body) + GAP * (body.size() - 1) - (footTop() - GAP - bodyTop());
  }

  /** The table of answers, if this is a settings card. */
  Optional<AnswersElement> answers() {
    return body.stream()
        .filter(AnswersElement.class::isInstance)
        .map(AnswersElement.class::cast)
        .findFirst();
  }

  /** What cannot be printed, apart from the height of the page. */
  List<Problem> problems() {
    List<Problem> problems = new ArrayList<>();
    top.forEach(piece -> problems.addAll(piece.problems()));
    body.forEach(piece -> problems.addAll(piece.problems()));
    problems.addAll(contacts.problems());
    problems.addAll(footer.problems());
    problems.addAll(code.problems());
    return problems;
  }

  /** Paints all blocks. Remaining space is spread over the body, most of it between blocks. */
  void paint(Canvas canvas, PdfStructureElement document) {
    double y = CardStyle.TOP;
    for (CardElement piece : top) {
      piece.paint(canvas, document, y, 0);
      y += piece.height() + GAP;
    }
    int joints = body.stream().mapToInt(CardElement::joints).sum();
    double left = Math.max(0, -overflow());
    double loose = joints == 0 ? 0 : Math.min(MOST_LOOSE, left / 2 / joints);
    double gap = Math.min(MOST_GAP, GAP + (left - loose * joints) / body.size());
    for (CardElement piece : body) {
      piece.paint(canvas, document, y, loose);
      y += piece.height() + piece.joints() * loose + gap;
    }
    foot(canvas, document);
  }

  private void foot(Canvas canvas, PdfStructureElement document) {
    double y = footTop();
    canvas.artifact(
        () ->
            canvas.line(
                CardStyle.LEFT, y - 1.2, CardStyle.RIGHT - code.width() - code.quiet(), y - 1.2, 0.7));
    contacts.paint(canvas, document, y, 0);
    footer.paint(canvas, document, CardStyle.BOTTOM - footer.height(), 0);
    code.paint(canvas, document, CardStyle.BOTTOM - code.height(), 0);
  }
}
