package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stackside.render.plan.Phrase;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Finds numbers that can be misread: glued to their unit, with a zero too many or too few, in
 * thousands without a comma, or joined by a dash.
 */
final class NumberBadlyWritten implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "number-badly-written",
          Severity.ERROR,
          "a number on a card is written so that it can be misread");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final String UNIT = "(?:W|kW|V|kV|A|mA|mm|cm|m|s|ms|min|kg|g|mg|ml|ohm|L/min)";

  /** A way to write a number that can be misread, and how it should be. */
  private record Misreading(Pattern form, String why, String instead) {}

  private static final List<Misreading> MISREADINGS =
      List.of(
          new Misreading(
              Pattern.compile("\\d" + UNIT + "\\b"),
              "runs into its unit",
              "put a space before the unit"),
          new Misreading(
              Pattern.compile("\\d " + UNIT + "\\b"),
              "can be parted from its unit at the end of a line",
              "use one of the units that the content format knows"),
          new Misreading(
              Pattern.compile("\\b\\d+\\.\\d*0\\b"),
              "ends in a zero that can be read as ten times as much",
              "leave the zero out"),
          new Misreading(
              Pattern.compile("(?<![\\d.])\\.\\d"),
              "begins with a point that can be overlooked",
              "write a zero before the point"),
          new Misreading(
              Pattern.compile("(?<![\\d,.])\\d{4,}\\b"),
              "has four digits or more without a comma",
              "write a comma from 1,000"),
          new Misreading(
              Pattern.compile("\\d ?[-\u2013\u2014] ?\\d"),
              "is a range with a dash, which can be read as a minus",
              "write 'to' between the two"));

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Problem> problems = new ArrayList<>();
    CardPhrases.authored(card.plan()).forEach(phrase -> judge(phrase, problems));
    return problems;
  }

  private static void judge(Phrase phrase, List<Problem> problems) {
    for (Misreading misreading : MISREADINGS) {
      Matcher found = misreading.form().matcher(phrase.words());
      if (found.find()) {
        problems.add(
            FAULT
                .at(phrase.at(), "in '" + phrase.words() + "' the number " + misreading.why())
                .help(misreading.instead()));
      }
    }
  }
}
