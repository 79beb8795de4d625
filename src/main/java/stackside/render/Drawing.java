package stackside.render;

import java.util.List;

/**
 * A drawing as a value: shapes in painting order on a sheet of a size in millimetres, with a title
 * and a description for those who cannot see it. Pages paint it as SVG, cards as PDF vectors.
 */
public record Drawing(
    String title, String description, double width, double height, List<Shape> shapes) {

  public Drawing {
    shapes = List.copyOf(shapes);
  }
}
