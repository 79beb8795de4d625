package stackside.render.card;

import com.lowagie.text.pdf.PdfStructureElement;
import java.util.List;
import stackside.source.Problem;

/** A measured block of a card. It is painted once its place is known. */
interface CardElement {

  /** Height in millimetres. */
  double height();

  /** The number of places where space may be added. */
  default int joints() {
    return 0;
  }

  /**
   * Paints at a height measured from the top of the page, as part of the document's structure,
   * adding some space at each joint.
   */
  void paint(Canvas canvas, PdfStructureElement document, double y, double loose);

  /** What cannot be printed as it is. */
  List<Problem> problems();
}
