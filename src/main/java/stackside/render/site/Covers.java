package stackside.render.site;

import stackside.derive.coverage.Cover;
import stackside.render.Mark;

/** Describes what was found for a question, as a word with its shape. */
final class Covers {

  private Covers() {}

  static RichLine status(Cover cover, PageContext here) {
    if (cover instanceof Cover.Answered answered) {
      return Answers.status(answered.profile(), here);
    }
    if (cover instanceof Cover.Ambiguous) {
      return PageContext.status(Mark.TRIANGLE, here.say("cover.ambiguous"));
    }
    if (cover instanceof Cover.Unclear) {
      return PageContext.status(Mark.TRIANGLE, here.say("cover.unclear"));
    }
    if (cover instanceof Cover.Gap) {
      return PageContext.status(Mark.TRIANGLE, here.say("cover.gap"));
    }
    throw new IllegalStateException("a cover without words: " + cover);
  }
}
