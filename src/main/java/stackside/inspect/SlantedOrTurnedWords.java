package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds italics, turned lines and words broken at the end of a line. */
final class SlantedOrTurnedWords implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "slanted-or-turned-words",
          Severity.ERROR,
          "words on a card are slanted, turned or broken with a hyphen");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final Pattern SLANTED = Pattern.compile("(?i)italic|oblique");
  private static final Pattern BROKEN = Pattern.compile("\\p{L}[-\u00ad\u2010]$");

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Problem> problems = new ArrayList<>();
    for (PrintedWords words : card.seen().words()) {
      if (SLANTED.matcher(words.font()).find()) {
        problems.add(FAULT.at(card.at(words), "'" + words.text() + "' is set in italics"));
      }
      if (!words.upright()) {
        problems.add(FAULT.at(card.at(words), "'" + words.text() + "' is turned"));
      }
      if (BROKEN.matcher(words.text()).find()) {
        problems.add(FAULT.at(card.at(words), "'" + words.text() + "' ends in a hyphen"));
      }
    }
    return problems;
  }
}
