package stackside.render.site;

import java.util.List;

/**
 * Current density and heating to explore, for learning only. The numbers that it starts from are
 * those of a worked example in a textbook, and its table says the same without scripts.
 *
 * @param sections what can be read without scripts
 */
public record ExplorerPage(
    Frame frame, List<Control> controls, List<Result> results, List<Section> sections)
    implements Page {
  public ExplorerPage {
    controls = List.copyOf(controls);
    results = List.copyOf(results);
    sections = List.copyOf(sections);
  }

  /** A number to slide. */
  public record Control(
      String name,
      String label,
      String least,
      String most,
      String step,
      String start,
      String unit) {}

  /** What comes of it. */
  public record Result(String name, String label, String unit) {}

  @Override
  public String template() {
    return "explorer.ftlh";
  }
}
