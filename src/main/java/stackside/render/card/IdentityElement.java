package stackside.render.card;

import com.lowagie.text.pdf.PdfStructureElement;
import java.util.List;
import java.util.stream.Stream;
import stackside.render.plan.Block;
import stackside.render.plan.Phrase;
import stackside.source.Problem;

/** Room, generator and asset number, the title of the face, and when not to use the card. */
final class IdentityElement implements CardElement {

  private static final double PLATE_PAD = 3;
  private static final double GAP = 4;

  private final Paragraph room;
  private final Paragraph asset;
  private final Paragraph title;
  private final Paragraph warning;

  IdentityElement(Block.Identity block, CardStyle setting) {
    asset = setting.far(block.asset(), CardStyle.WIDTH / 2);
    double left = CardStyle.WIDTH - asset.widest() - 2 * PLATE_PAD - GAP;
    Phrase both =
        new Phrase(block.room().words() + ", " + block.machine().words(), block.room().at());
    room = setting.far(onOneLine(both), left);
    warning = setting.near(block.warning(), CardStyle.WIDTH);
    title = setting.heading(onOneLine(block.title()), CardStyle.WIDTH - warning.widest() - GAP);
  }

  /** Fits the phrase on one line, because the place and size of everything below depend on it. */
  private static Phrase onOneLine(Phrase phrase) {
    return new Phrase(phrase.words().replace(' ', '\u00a0'), phrase.at());
  }

  @Override
  public double height() {
    return room.height() + Math.max(title.height(), warning.height());
  }

  @Override
  public void paint(Canvas canvas, PdfStructureElement document, double y, double loose) {
    PdfStructureElement heading = Canvas.element(document, "H1");
    double plate = asset.widest() + 2 * PLATE_PAD;
    double second = y + room.height();
    canvas.artifact(
        () ->
            canvas.box(
                CardStyle.RIGHT - plate + 0.3, y + 0.8, plate - 0.6, room.height() - 1.6, 0.6));
    canvas.in(
        heading,
        () -> {
          room.paint(canvas, CardStyle.LEFT, y);
          asset.paint(canvas, CardStyle.RIGHT - plate + PLATE_PAD, y);
          title.paint(canvas, CardStyle.LEFT, second);
        });
    double lower = title.base(0) - warning.base(0);
    canvas.in(
        Canvas.element(document, "P"),
        () -> warning.paint(canvas, CardStyle.RIGHT - warning.widest(), second + lower));
  }

  @Override
  public List<Problem> problems() {
    return Stream.of(room, asset, title, warning)
        .flatMap(each -> each.problems().stream())
        .toList();
  }
}
