package stackside.render.site;

import java.util.List;
import java.util.Optional;

/**
 * Questions about one place, each with its answers to choose from and the right one folded away.
 *
 * @param key names the place where a device keeps how far its reader got
 */
public record SelfCheckPage(Frame frame, String key, Line lead, List<Asked> questions)
    implements Page {
  public SelfCheckPage {
    questions = List.copyOf(questions);
  }

  /**
   * One question.
   *
   * @param drawing the panel to find the answer on
   * @param right the right answer in words
   * @param source where it stands
   */
  public record Asked(
      String id,
      String words,
      Optional<Html> drawing,
      List<Choice> choices,
      String right,
      Line source) {
    public Asked {
      choices = List.copyOf(choices);
    }
  }

  /**
   * One answer.
   *
   * @param right whether it is the right one: "right" or "wrong"
   * @param said what is said of it once chosen
   */
  public record Choice(String words, String right, String said) {}

  @Override
  public String template() {
    return "self-check.ftlh";
  }
}
