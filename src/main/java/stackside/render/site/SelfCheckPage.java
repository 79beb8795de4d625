package stackside.render.site;

import java.util.List;
import java.util.Optional;

/**
 * Questions about one place, each with answers to choose from; the right one is hidden at first.
 *
 * @param key identifies where a device stores the reader's progress
 */
public record SelfCheckPage(PageFrame frame, String key, RichLine lead, List<QuestionItem> questions)
    implements Page {
  public SelfCheckPage {
    questions = List.copyOf(questions);
  }

  /**
   * One question.
   *
   * @param drawing the panel on which to find the answer
   * @param right the right answer in words
   * @param source where it is documented
   */
  public record QuestionItem(
      String id,
      String words,
      Optional<Html> drawing,
      List<Choice> choices,
      String right,
      RichLine source) {
    public QuestionItem {
      choices = List.copyOf(choices);
    }
  }

  /**
   * One choice.
   *
   * @param right "right" or "wrong"
   * @param said the comment shown once it has been chosen
   */
  public record Choice(String words, String right, String said) {}

  @Override
  public String template() {
    return "self-check.ftlh";
  }
}
