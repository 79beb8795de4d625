package stackside.render.card;

import com.lowagie.text.pdf.PdfStructureElement;
import java.util.List;
import stackside.source.Problem;

/** A block of a card, measured; it is painted once its place is known. */
interface Piece {

  /** Millimetres from top to bottom. */
  double height();

  /** Paints at a height from the top of the page, as part of the document's structure. */
  void paint(Canvas canvas, PdfStructureElement document, double y);

  /** What of it cannot be printed as it stands. */
  List<Problem> problems();
}
