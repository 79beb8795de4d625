package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import stackside.render.plan.Phrase;
import stackside.render.plan.StepLine;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds steps that branch, loop or point to another page; a card is read straight down. */
final class DrillBranches implements CardRule {

  private static final Fault FAULT =
      new Fault("drill-branches", Severity.ERROR, "a drill on a card sends the reader elsewhere");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final Pattern AWAY =
      Pattern.compile(
          "(?i)\\b(?:go (?:back )?to|(?:back|on|skip) to step|repeat (?:from )?step|see (?:page|overleaf|below|above|left|right|step|drill)|otherwise|if not,|turn over)\\b");

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Problem> problems = new ArrayList<>();
    CardPhrases.steps(card.plan())
        .filter(step -> step.part() == StepLine.Part.CHECK)
        .flatMap(StepLine::phrases)
        .filter(phrase -> AWAY.matcher(phrase.words()).find())
        .forEach(phrase -> problems.add(problem(phrase)));
    return problems;
  }

  private static Problem problem(Phrase phrase) {
    return FAULT
        .at(phrase.at(), "'" + phrase.words() + "' sends the reader away from the next step")
        .help("write steps that are read one after the other; branches belong on the site");
  }
}
