package stackside.render.site;

import java.util.List;
import java.util.Optional;

/**
 * A drill to walk through step by step; without scripts it is a plain list.
 *
 * @param key identifies where a device stores that the drill was completed
 * @param drill the link to the drill
 */
public record PracticePage(PageFrame frame, String key, RichLine drill, List<Stage> stages)
    implements Page {
  public PracticePage {
    stages = List.copyOf(stages);
  }

  /**
   * One thing to do.
   *
   * @param name the kind of step
   * @param does what to do or say
   * @param see what to look for afterwards
   * @param style the class for the style sheet
   */
  public record Stage(String name, List<RichLine> does, Optional<RichLine> see, String style) {
    public Stage {
      does = List.copyOf(does);
    }
  }

  @Override
  public String template() {
    return "practice.ftlh";
  }
}
