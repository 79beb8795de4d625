package stackside.render.card;

import java.util.List;
import stackside.render.OutputFile;
import stackside.source.Problem;

/**
 * The finished cards and what kept any of them from being printed as it should be.
 *
 * @param files one for each plan, in the order of the plans
 * @param printed those of them that are cards and not pages saying why there is none
 * @param problems sorted, each once
 */
public record RenderedCards(
    List<OutputFile> files, List<OutputFile> printed, List<Problem> problems) {
  public RenderedCards {
    files = List.copyOf(files);
    printed = List.copyOf(printed);
    problems = List.copyOf(problems);
  }
}
