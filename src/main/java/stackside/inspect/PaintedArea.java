package stackside.inspect;

import java.util.List;
import java.util.Optional;

/**
 * A shape on the page, its fill and its outline.
 *
 * @param box the ink, outline included
 * @param line the width of the outline in millimetres, 0 without one
 * @param roles the elements of the structure that it is in, outermost first
 */
public record PaintedArea(
    Box box, Optional<Colour> fill, Optional<Colour> outline, double line, List<String> roles) {

  public PaintedArea {
    roles = List.copyOf(roles);
  }

  public boolean inFigure() {
    return roles.contains("Figure");
  }
}
