package stackside.inspect;

import java.util.List;

/**
 * Words on one base line in one face, size and colour, as they stand on the page.
 *
 * @param box the ink of the letters
 * @param base where the base line is, in millimetres from the top
 * @param points the size of the type as printed
 * @param capital the height of the highest capital without a curve, in millimetres; 0 without any
 * @param small the height of the highest small letter without ascender or curve; 0 without any
 * @param roles the elements of the structure that the words are in, outermost first; empty for an
 *     artifact
 * @param upright whether the line runs from left to right without a slant
 */
public record PrintedWords(
    String text,
    Box box,
    double base,
    double points,
    String font,
    Colour colour,
    double capital,
    double small,
    List<String> roles,
    boolean upright) {

  public PrintedWords {
    roles = List.copyOf(roles);
  }

  /** Whether the words are part of a drawing. */
  public boolean inFigure() {
    return roles.contains("Figure");
  }
}
