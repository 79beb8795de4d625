package stackside.render.site;

import java.util.List;
import java.util.Optional;

/**
 * A drill to walk step by step; a plain list without scripts.
 *
 * @param key names the place where a device keeps that it was walked
 * @param drill the link to the drill
 */
public record PracticePage(Frame frame, String key, Line drill, List<Stage> stages)
    implements Page {
  public PracticePage {
    stages = List.copyOf(stages);
  }

  /**
   * One thing to do.
   *
   * @param name what kind of step it is
   * @param does what to do or say
   * @param see what to see then
   * @param style the class for the style sheet
   */
  public record Stage(String name, List<Line> does, Optional<Line> see, String style) {
    public Stage {
      does = List.copyOf(does);
    }
  }

  @Override
  public String template() {
    return "practice.ftlh";
  }
}
