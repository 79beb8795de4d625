package stackside.render;

import stackside.render.PanelPlan.Misfit;
import stackside.render.Shape.Weight;

/** A note on something that fits a socket but must not go in: what it is, and what would happen. */
final class MisfitNote {

  private MisfitNote() {}

  static boolean fits(Misfit misfit, Pen pen, double room) {
    return Lettering.of(Weight.BOLD).widestWord(misfit.what(), pen.text()) <= room
        && Lettering.of(Weight.REGULAR).widestWord(misfit.outcome(), pen.text())
            <= room - indent(pen);
  }

  /** The width of the note within a room, once its lines are broken. */
  static double width(Misfit misfit, Pen pen, double room) {
    double what =
        Lettering.of(Weight.BOLD).lines(misfit.what(), pen.text(), room).stream()
            .mapToDouble(line -> pen.width(line, Weight.BOLD))
            .max()
            .orElse(0);
    double outcome =
        Lettering.of(Weight.REGULAR)
            .lines(misfit.outcome(), pen.text(), room - indent(pen))
            .stream()
            .mapToDouble(line -> pen.width(line, Weight.REGULAR))
            .max()
            .orElse(0);
    return Math.max(what, outcome + indent(pen));
  }

  /** Draws the note below a given height; returns where it ends. */
  static double draw(Misfit misfit, Pen pen, double left, double top, double room) {
    double y = pen.block(left, top, room, misfit.what(), Weight.BOLD, Ink.INK);
    double size = 0.8 * pen.text();
    pen.addAll(misfit.mark().at(left + size / 2, y + pen.capital() / 2, size));
    return pen.block(
        left + indent(pen), y, room - indent(pen), misfit.outcome(), Weight.REGULAR, Ink.INK);
  }

  private static double indent(Pen pen) {
    return 1.15 * pen.text();
  }
}
