package stackside.render.card;

import java.util.List;
import stackside.render.OutputFile;
import stackside.source.Problem;

/**
 * The finished cards, and whatever prevented any of them from being printed as planned.
 *
 * @param files one per plan, in the order of the plans
 * @param printed those that are cards, as opposed to pages that say why there is no card
 * @param problems sorted, without duplicates
 */
public record RenderedCards(
    List<OutputFile> files, List<OutputFile> printed, List<Problem> problems) {
  public RenderedCards {
    files = List.copyOf(files);
    printed = List.copyOf(printed);
    problems = List.copyOf(problems);
  }
}
