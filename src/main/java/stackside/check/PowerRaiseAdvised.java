package stackside.check;

import java.util.List;
import java.util.regex.Pattern;
import stackside.derive.Analysis;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds advice to turn up power, level or voltage when something does not work. */
final class PowerRaiseAdvised implements Rule {
  private static final Fault FAULT =
      new Fault("power-raise-advised", Severity.ERROR, "staff are told to turn up the power");

  private static final String CONTROL =
      "(power|watts?|limit|level|effect|setting|settings|voltage|generator|machine)";

  private static final Pattern WORDS =
      Pattern.compile(
          "(turn|put|set|dial|move) up (the )?"
              + CONTROL
              + "|(turn|put|set|dial|move) (the )?"
              + CONTROL
              + " (up|higher)"
              + "|(increase|raise|boost) (the )?"
              + CONTROL
              + "|(use|try|choose|take|go to) (a |the )?(higher|next|more) "
              + CONTROL
              + "|(use|try|go) (a )?higher\\b");

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
        "'%s' tells staff to turn up the power",
        "no effect means that the current goes elsewhere: say what to look at instead");
  }
}
