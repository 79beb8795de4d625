package stackside.render.card;

import stackside.render.Shape.Weight;
import stackside.render.plan.Phrase;

/** A phrase, or part of one, in one face and size. */
record Run(String words, Weight weight, double points, Phrase source) {

  static Run regular(Phrase phrase, double points) {
    return new Run(phrase.words(), Weight.REGULAR, points, phrase);
  }

  static Run bold(Phrase phrase, double points) {
    return new Run(phrase.words(), Weight.BOLD, points, phrase);
  }
}
