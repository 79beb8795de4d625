package stackside.check;

import java.util.List;
import java.util.regex.Pattern;
import stackside.derive.Analysis;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds advice to try the instrument with a spark before use. */
final class TestSparkAdvised implements Rule {
  private static final Fault FAULT =
      new Fault("test-spark-advised", Severity.ERROR, "staff are told to try out a spark");

  private static final Pattern WORDS =
      Pattern.compile(
          "(test|trial)[- ]?(spark|fir(e|ing)|shot|burn|activat\\w*)"
              + "|spark(ing)? (test|it |against|on |off |to )"
              + "|(touch|tap|brush|scratch)\\w* (the |a )?\\w*\\s?(plate|pad|return electrode|neutral electrode|clamp|metal)"
              + "|activate (it )?(in|into) (the )?air");

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
        "'%s' tells staff to try out a spark",
        "a pre-use check is a look, a trace or a reading aloud");
  }
}
