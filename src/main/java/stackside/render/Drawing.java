package stackside.render;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A drawing as a value: shapes in painting order on a sheet whose size is in millimetres, with a
 * title and a description for people who cannot see it. Pages paint it as SVG, cards as PDF
 * vectors.
 */
public record Drawing(
    String title, String description, double width, double height, List<Shape> shapes) {

  public Drawing {
    shapes = List.copyOf(shapes);
  }

  /** Describes a drawing in words: its caption, then sentences given without full stops. */
  static String description(String caption, Stream<String> sentences) {
    return Stream.concat(Stream.of(caption), sentences)
        .map(each -> each + ".")
        .collect(Collectors.joining(" "));
  }
}
