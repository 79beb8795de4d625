package stackside.check;

import java.util.List;
import java.util.regex.Pattern;
import stackside.derive.Analysis;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds advice to move a plug or an instrument's cable while the pedal is pressed. */
final class PlugMovedUnderPower implements Rule {
  private static final Fault FAULT =
      new Fault(
          "plug-moved-under-power",
          Severity.ERROR,
          "staff are told to move a plug while the pedal is pressed");

  private static final Pattern WORDS =
      Pattern.compile(
          "(pull|push|swap|change|move|unplug|plug|replace|reseat|wiggle|turn|bend)\\b.*\\b(plug|cable|socket|connector|plate|lead)\\b.*"
              + "\\b(while|with|during|as)\\b.*\\b(pedal|foot) (is )?(down|pressed|on\\b|held)"
              + "|(press|pressing|hold|holding) (down )?the pedal (and|while|when) .*(plug|cable|socket|connector|plate|lead)\\b"
              + "|(while|during|with) (it is )?(activat|energi[sz]|under power|current on).*(plug|cable|socket)");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return Advice.problems(
        analysis.unit(),
        FAULT,
        WORDS,
        "'%s' tells staff to move a plug under power",
        "let the foot come off first, in a sentence of its own");
  }
}
