package stackside.inspect;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import stackside.render.OutputFile;

/**
 * What is on a finished card, read back from its bytes.
 *
 * @param width of the first page, in millimetres
 * @param height of the first page, in millimetres
 * @param words in painting order
 * @param areas in painting order
 * @param structure in reading order
 */
public record Inspection(
    String path,
    int pages,
    double width,
    double height,
    List<PrintedWords> words,
    List<PaintedArea> areas,
    List<EmbeddedFont> fonts,
    List<StructureElement> structure,
    Optional<ReadCode> code) {

  public Inspection {
    words = List.copyOf(words);
    areas = List.copyOf(areas);
    fonts = List.copyOf(fonts);
    structure = List.copyOf(structure);
  }

  /** What is seen of a card that could not be printed. */
  static Inspection nothing(String path) {
    return new Inspection(
        path, 0, 0, 0, List.of(), List.of(), List.of(), List.of(), Optional.empty());
  }

  /** Reads a card. */
  public static Inspection of(OutputFile file) {
    return PdfReader.read(file);
  }

  /** All words in reading order, with single spaces. */
  public String text() {
    StringBuilder text = new StringBuilder();
    structure.forEach(element -> text.append(element.text()).append(' '));
    return text.toString().strip().replaceAll("\\s+", " ");
  }

  /** The last filled shape that words lie in, or the paper. */
  Colour ground(PrintedWords words) {
    for (int last = areas.size() - 1; last >= 0; last--) {
      PaintedArea area = areas.get(last);
      if (area.fill().isPresent() && area.box().holds(words.box())) {
        return area.fill().get();
      }
    }
    return Colour.WHITE;
  }

  /**
   * How high the capitals of these words are, in millimetres. If they have none, how high capitals
   * of the same font would be at their size.
   */
  public double capital(PrintedWords words) {
    return words.capital() > 0 ? words.capital() : share(words, PrintedWords::capital);
  }

  /** The same for small letters without ascender. */
  public double small(PrintedWords words) {
    return words.small() > 0 ? words.small() : share(words, PrintedWords::small);
  }

  private double share(PrintedWords words, ToDoubleFunction<PrintedWords> height) {
    return this.words.stream()
        .filter(other -> other.font().equals(words.font()) && height.applyAsDouble(other) > 0)
        .mapToDouble(other -> height.applyAsDouble(other) / other.points() * words.points())
        .max()
        .orElse(0);
  }
}
