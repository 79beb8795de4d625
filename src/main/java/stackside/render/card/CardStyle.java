package stackside.render.card;

import stackside.render.plan.LetterHeights;
import stackside.render.plan.Phrase;
import stackside.render.plan.TypeScale;

/** The typeface, sizes and measures that all blocks of one card share. */
record CardStyle(Typeface typeface, LetterHeights letters, TypeScale scale) {

  static final double LEFT = 10;
  static final double WIDTH = 190;
  static final double RIGHT = LEFT + WIDTH;
  static final double TOP = 10;
  static final double BOTTOM = 287;

  Paragraph near(Phrase phrase, double width) {
    return paragraph(width, Run.regular(phrase, scale.near()));
  }

  Paragraph nearBold(Phrase phrase, double width) {
    return paragraph(width, Run.bold(phrase, scale.near()));
  }

  Paragraph heading(Phrase phrase, double width) {
    return paragraph(width, Run.bold(phrase, scale.heading()));
  }

  Paragraph far(Phrase phrase, double width) {
    return Paragraph.of(this, width, TypeScale.FAR_PITCH, Run.bold(phrase, scale.far()));
  }

  Paragraph small(Phrase phrase, double width) {
    return paragraph(width, Run.regular(phrase, scale.small()));
  }

  Paragraph paragraph(double width, Run... runs) {
    return Paragraph.of(this, width, TypeScale.PITCH, runs);
  }
}
