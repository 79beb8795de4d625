package stackside.render.site;

import java.util.Optional;

/**
 * A piece of a line: words, optionally with a link, optionally with the shape of a status before
 * them.
 *
 * @param href relative to the page
 * @param shape the shape, hidden from screen readers because the words say the same
 * @param style how the words are styled
 */
public record Piece(String text, Optional<String> href, Optional<Html> shape, String style) {

  static Piece of(String text) {
    return new Piece(text, Optional.empty(), Optional.empty(), "");
  }

  static Piece link(String text, String href) {
    return new Piece(text, Optional.of(href), Optional.empty(), "");
  }

  static Piece status(String text, Html shape) {
    return new Piece(text, Optional.empty(), Optional.of(shape), "status");
  }

  /** The words that matter most in their line, such as large numerals. */
  static Piece strong(String text) {
    return new Piece(text, Optional.empty(), Optional.empty(), "strong");
  }

  /** Words exactly as they appear on a display or machine. */
  static Piece shown(String text) {
    return new Piece(text, Optional.empty(), Optional.empty(), "shown");
  }

  static Piece quiet(String text) {
    return new Piece(text, Optional.empty(), Optional.empty(), "quiet");
  }
}
