package stackside.render.card;

import com.lowagie.text.pdf.PdfStructureElement;
import java.util.ArrayList;
import java.util.List;
import stackside.render.plan.Block;
import stackside.source.Problem;

/** Whom to call: a large number, with role and hours beside it. */
final class ContactsPiece implements Piece {

  private static final double GAP = 6;

  private final List<Row> rows = new ArrayList<>();
  private final double words;

  private record Row(Paragraph phone, Paragraph role, Paragraph hours) {
    double height() {
      return Math.max(phone.height(), role.height() + hours.height());
    }
  }

  ContactsPiece(Block.Contacts block, Setting setting, double width) {
    double phones =
        block.calls().stream()
            .mapToDouble(call -> setting.far(call.phone(), width).widest())
            .max()
            .orElse(0);
    words = phones + GAP;
    for (Block.Contacts.Call call : block.calls()) {
      rows.add(
          new Row(
              setting.far(call.phone(), width),
              setting.nearBold(call.role(), width - words),
              setting.near(call.hours(), width - words)));
    }
  }

  @Override
  public double height() {
    return rows.stream().mapToDouble(Row::height).sum();
  }

  @Override
  public void paint(Canvas canvas, PdfStructureElement document, double y, double loose) {
    double top = y;
    for (Row row : rows) {
      double at = top;
      double half = (row.height() - row.role().height() - row.hours().height()) / 2;
      canvas.in(
          Canvas.element(document, "P"),
          () -> {
            row.phone().paint(canvas, Setting.LEFT, at + (row.height() - row.phone().height()) / 2);
            row.role().paint(canvas, Setting.LEFT + words, at + half);
            row.hours().paint(canvas, Setting.LEFT + words, at + half + row.role().height());
          });
      top += row.height();
    }
  }

  @Override
  public List<Problem> problems() {
    List<Problem> problems = new ArrayList<>();
    for (Row row : rows) {
      problems.addAll(row.phone().problems());
      problems.addAll(row.role().problems());
      problems.addAll(row.hours().problems());
    }
    return problems;
  }
}
