package stackside.inspect;

import java.util.List;
import java.util.regex.Pattern;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds long runs of capitals, which are slower to read than mixed case. */
final class CapitalsInRow implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "capitals-in-row", Severity.ERROR, "more than three words in a row stand in capitals");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final Pattern RUN = Pattern.compile("(?:\\b[A-Z]{2,}\\b[ ,.;:]*){4,}");

  @Override
  public List<Problem> problems(InspectedCard card) {
    return card.plan()
        .phrases()
        .filter(phrase -> RUN.matcher(InspectedCard.spaced(phrase.words())).find())
        .map(
            phrase ->
                FAULT
                    .at(
                        phrase.at(),
                        "'" + phrase.words() + "' has more than three words in capitals")
                    .help("write it in small letters, with a capital where a sentence begins"))
        .toList();
  }
}
