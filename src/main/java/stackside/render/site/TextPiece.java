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
public record TextPiece(String text, Optional<String> href, Optional<Html> shape, String style) {

  static TextPiece of(String text) {
    return new TextPiece(text, Optional.empty(), Optional.empty(), "");
  }

  static TextPiece link(String text, String href) {
    return new TextPiece(text, Optional.of(href), Optional.empty(), "");
  }

  static TextPiece status(String text, Html shape) {
    return new TextPiece(text, Optional.empty(), Optional.of(shape), "status");
  }

  /** The words that matter most in their line, such as large numerals. */
  static TextPiece strong(String text) {
    return new TextPiece(text, Optional.empty(), Optional.empty(), "strong");
  }

  /** Words exactly as they appear on a display or machine. */
  static TextPiece shown(String text) {
    return new TextPiece(text, Optional.empty(), Optional.empty(), "shown");
  }

  static TextPiece quiet(String text) {
    return new TextPiece(text, Optional.empty(), Optional.empty(), "quiet");
  }
}
