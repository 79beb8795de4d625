package stackside.render.card;

import com.lowagie.text.pdf.PdfStructureElement;
import java.util.ArrayList;
import java.util.List;
import stackside.render.plan.Block;
import stackside.source.Problem;

/** Whom to call: a large number, with role and hours beside it. */
final class ContactsElement implements CardElement {

  private static final double GAP = 6;

  private final List<MeasuredContact> rows = new ArrayList<>();
  private final double words;

  private record MeasuredContact(Paragraph phone, Paragraph role, Paragraph hours) {
    double height() {
      return Math.max(phone.height(), role.height() + hours.height());
    }
  }

  ContactsElement(Block.Contacts block, CardStyle setting, double width) {
    double phones =
        block.calls().stream()
            .mapToDouble(call -> setting.far(call.phone(), width).widest())
            .max()
            .orElse(0);
    words = phones + GAP;
    for (Block.Contacts.Call call : block.calls()) {
      rows.add(
          new MeasuredContact(
              setting.far(call.phone(), width),
              setting.nearBold(call.role(), width - words),
              setting.near(call.hours(), width - words)));
    }
  }

  @Override
  public double height() {
    return rows.stream().mapToDouble(MeasuredContact::height).sum();
  }

  @Override
  public void paint(Canvas canvas, PdfStructureElement document, double y, double loose) {
    double top = y;
    for (MeasuredContact row : rows) {
      double at = top;
      double half = (row.height() - row.role().height() - row.hours().height()) / 2;
      canvas.in(
          Canvas.element(document, "P"),
          () -> {
            row.phone().paint(canvas, CardStyle.LEFT, at + (row.height() - row.phone().height()) / 2);
            row.role().paint(canvas, CardStyle.LEFT + words, at + half);
            row.hours().paint(canvas, CardStyle.LEFT + words, at + half + row.role().height());
          });
      top += row.height();
    }
  }

  @Override
  public List<Problem> problems() {
    List<Problem> problems = new ArrayList<>();
    for (MeasuredContact row : rows) {
      problems.addAll(row.phone().problems());
      problems.addAll(row.role().problems());
      problems.addAll(row.hours().problems());
    }
    return problems;
  }
}
