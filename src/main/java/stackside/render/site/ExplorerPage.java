package stackside.render.site;

import java.util.List;

/**
 * Current density and heating to explore, for learning only. The initial numbers come from a worked
 * example in a textbook. Without scripts, the table shows the same.
 *
 * @param sections what can be read without scripts
 */
public record ExplorerPage(
    PageFrame frame, List<Control> controls, List<Result> results, List<Section> sections)
    implements Page {
  public ExplorerPage {
    controls = List.copyOf(controls);
    results = List.copyOf(results);
    sections = List.copyOf(sections);
  }

  /** A number with a slider. */
  public record Control(
      String name,
      String label,
      String least,
      String most,
      String step,
      String start,
      String unit) {}

  /** One calculated number. */
  public record Result(String name, String label, String unit) {}

  @Override
  public String template() {
    return "explorer.ftlh";
  }
}
