package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import stackside.render.plan.Block;
import stackside.render.plan.Phrase;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds make-safe lines that nobody takes in at one glance from the far reading distance. */
final class MakeSafeTooLong implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "make-safe-too-long",
          Severity.ERROR,
          "the make-safe words are more than two lines of 32 letters");

  private static final int LINES = 2;
  private static final int LETTERS = 32;

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Phrase> lines =
        card.plan().blocks(Block.MakeSafe.class).stream().flatMap(Block.MakeSafe::phrases).toList();
    List<Problem> problems = new ArrayList<>();
    if (lines.size() > LINES) {
      problems.add(
          FAULT
              .at(lines.get(LINES).at(), "there are " + lines.size() + " make-safe lines")
              .help("say it in two lines; what else there is to do belongs in a drill"));
    }
    lines.stream()
        .filter(line -> line.words().length() > LETTERS)
        .forEach(
            line ->
                problems.add(
                    FAULT
                        .at(
                            line.at(),
                            "the make-safe line '"
                                + line.words()
                                + "' has "
                                + line.words().length()
                                + " letters, and a line read from afar has room for "
                                + LETTERS)
                        .help("say it in fewer words, or use the second line")));
    return problems;
  }
}
