package stackside.render.card;

import com.lowagie.text.pdf.PdfStructureElement;
import java.util.List;
import stackside.source.Problem;

/** A block of a card, measured; it is painted once its place is known. */
interface Piece {

  /** Millimetres from top to bottom. */
  double height();

  /** How many places there are where space may be added. */
  default int joints() {
    return 0;
  }

  /**
   * Paints at a height from the top of the page, as part of the document's structure, with some
   * space added at each joint.
   */
  void paint(Canvas canvas, PdfStructureElement document, double y, double loose);

  /** What of it cannot be printed as it stands. */
  List<Problem> problems();
}
