package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import stackside.render.plan.StepLine;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds steps that join two actions, of which the second is easily forgotten. */
final class StepWithTwoActions implements CardRule {

  private static final Fault FAULT =
      new Fault("step-with-two-actions", Severity.ERROR, "a step asks for more than one action");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final Pattern SECOND =
      Pattern.compile(
          "(?i)\\b(?:and|then)\\s+(?:then\\s+)?(?:ask|attach|call|change|close|connect|feel|find|hold|keep|label|lift|lock|look|move|name|open|peel|place|plug|point|press|pull|push|put|read|release|remove|replace|report|rinse|say|set|show|start|stick|stop|switch|take|tell|touch|trace|turn|unplug|wait|watch|wipe|write)\\b");

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Problem> problems = new ArrayList<>();
    CardPhrases.steps(card.plan())
        .filter(step -> step.part() == StepLine.Part.CHECK)
        .map(StepLine::action)
        .filter(action -> SECOND.matcher(action.words()).find())
        .forEach(
            action ->
                problems.add(
                    FAULT
                        .at(action.at(), "the step '" + action.words() + "' asks for two actions")
                        .help("make a step of each")));
    return problems;
  }
}
