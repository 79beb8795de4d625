package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stackside.render.plan.Phrase;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds signs that are misread, and words that leave the reader to guess. */
final class BannedTokenOnCard implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "banned-token-on-card",
          Severity.ERROR,
          "a step or a cell holds a sign or a word that can be misread or says nothing");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final Pattern SIGNS =
      Pattern.compile(
          "[<>@&+~±µ×]|(?<!\\bL)/|\\b(?:U|IU)\\b|\\b(?=[IVX]{2,}\\b)[IVX]+\\b|\\b\\d/\\d\\b");

  private static final Pattern VAGUE =
      Pattern.compile(
          "(?i)\\b(?:max|std|usual|usually|norm|approx|etc|as required|as appropriate|if necessary)\\b");

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Problem> problems = new ArrayList<>();
    CardPhrases.stepsAndCells(card.plan())
        .forEach(
            phrase -> {
              judge(phrase, SIGNS, "which can be misread", problems);
              judge(phrase, VAGUE, "which leaves the reader to guess", problems);
            });
    return problems;
  }

  private static void judge(Phrase phrase, Pattern banned, String why, List<Problem> problems) {
    Matcher found = banned.matcher(phrase.words());
    if (found.find()) {
      problems.add(
          FAULT
              .at(phrase.at(), "'" + phrase.words() + "' holds '" + found.group() + "', " + why)
              .help("say it in words, exactly"));
    }
  }
}
