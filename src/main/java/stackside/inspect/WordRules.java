package stackside.inspect;

import static stackside.check.Rule.error;
import static stackside.check.Rule.warning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stackside.check.Finding;
import stackside.check.Rule;
import stackside.derive.coverage.Cell;
import stackside.model.CardPart;
import stackside.render.plan.AnswerRow;
import stackside.render.plan.Block;
import stackside.render.plan.Phrase;

/** Words, numbers and rows as the plan has them. */
final class WordRules {

  private static final Pattern CAPITALS = Pattern.compile("(?:\\b[A-Z]{2,}\\b[ ,.;:]*){4,}");

  private static final String UNIT = "(?:W|kW|V|kV|A|mA|mm|cm|m|s|ms|min|kg|g|mg|ml|ohm|L/min)";

  private static final List<Misreading> MISREADINGS =
      List.of(
          new Misreading(
              Pattern.compile("\\d" + UNIT + "\\b"),
              "runs into its unit",
              "put a space before the unit"),
          new Misreading(
              Pattern.compile("\\d " + UNIT + "\\b"),
              "can be separated from its unit at the end of a line",
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

  /** A way to write a number that can be misread, and how it should be. */
  private record Misreading(Pattern form, String why, String instead) {}

  private static final Pattern SIGNS =
      Pattern.compile(
          "[<>@&+~±µ×]|(?<!\\bL)/|\\b(?:U|IU)\\b|\\b(?=[IVX]{2,}\\b)[IVX]+\\b|\\b\\d/\\d\\b");

  private static final Pattern VAGUE =
      Pattern.compile(
          "(?i)\\b(?:max|std|usual|usually|norm|approx|etc|as required|as appropriate|if necessary)\\b");

  private static final int MOST_ROWS = 10;

  private static final int CLOSE = 2;

  private WordRules() {}

  static List<Rule<InspectedCard>> rules() {
    return List.of(
        error(
            "capitals-in-row",
            "more than three words in a row are in capitals",
            WordRules::capitalsInRow),
        error(
            "number-badly-written",
            "a number on a card is written so that it can be misread",
            WordRules::numberBadlyWritten),
        error(
            "banned-token-on-card",
            "a step or a cell contains a sign or a word that can be misread or says nothing",
            WordRules::bannedTokenOnCard),
        error(
            "answer-missing-from-card",
            "something that a room offers is on none of its cards",
            WordRules::answerMissingFromCard),
        error("too-many-rows", "a card has more than ten rows", WordRules::tooManyRows),
        warning(
            "names-alike", "two names on a card differ by a letter or two", WordRules::namesAlike));
  }

  private static List<Finding> capitalsInRow(InspectedCard card) {
    return card.plan()
        .phrases()
        .filter(phrase -> CAPITALS.matcher(InspectedCard.spaced(phrase.words())).find())
        .map(
            phrase ->
                Finding.at(
                        phrase.at(),
                        "'" + phrase.words() + "' has more than three words in capitals")
                    .help("write it in small letters, with a capital at the start of a sentence"))
        .toList();
  }

  /**
   * Finds numbers that can be misread: glued to their unit, with a zero too many or too few, in
   * thousands without a comma, or joined by a dash.
   */
  private static List<Finding> numberBadlyWritten(InspectedCard card) {
    List<Finding> found = new ArrayList<>();
    CardPhrases.authored(card.plan()).forEach(phrase -> numberBadlyWritten(phrase, found));
    return found;
  }

  private static void numberBadlyWritten(Phrase phrase, List<Finding> found) {
    for (Misreading misreading : MISREADINGS) {
      if (misreading.form().matcher(phrase.words()).find()) {
        found.add(
            Finding.at(phrase.at(), "in '" + phrase.words() + "' the number " + misreading.why())
                .help(misreading.instead()));
      }
    }
  }

  private static List<Finding> bannedTokenOnCard(InspectedCard card) {
    List<Finding> found = new ArrayList<>();
    CardPhrases.stepsAndCells(card.plan())
        .forEach(
            phrase -> {
              bannedTokenOnCard(phrase, SIGNS, "which can be misread", found);
              bannedTokenOnCard(phrase, VAGUE, "which leaves the reader to guess", found);
            });
    return found;
  }

  private static void bannedTokenOnCard(
      Phrase phrase, Pattern banned, String why, List<Finding> found) {
    Matcher match = banned.matcher(phrase.words());
    if (match.find()) {
      found.add(
          Finding.at(
                  phrase.at(), "'" + phrase.words() + "' contains '" + match.group() + "', " + why)
              .help("say it in words, exactly"));
    }
  }

  private static List<Finding> answerMissingFromCard(InspectedCard card) {
    List<CardPart> parts = card.plan().room().cards();
    if (parts.isEmpty()) {
      return List.of();
    }
    List<Finding> found = new ArrayList<>();
    for (Cell cell :
        card.publication().analysis().coverage().of(card.plan().room(), card.plan().asset())) {
      if (parts.stream().noneMatch(part -> part.holds(cell.lesion(), cell.site()))) {
        found.add(
            Finding.at(
                    parts.get(0).at(),
                    "no card of "
                        + card.plan().room().title()
                        + " has '"
                        + cell.lesion().title()
                        + "' at '"
                        + cell.site().title()
                        + "'")
                .note(cell.offer().at(), "the room offers it here")
                .help("add the lesion and the site to one of the room's cards"));
      }
    }
    return found;
  }

  private static List<Finding> tooManyRows(InspectedCard card) {
    return card.plan().blocks(Block.Answers.class).stream()
        .filter(answers -> answers.rows().size() > MOST_ROWS)
        .map(
            answers ->
                Finding.at(card.at(), card.name() + " has " + answers.rows().size() + " rows")
                    .help("divide the rows between several cards with `cards:` in the room"))
        .toList();
  }

  private static List<Finding> namesAlike(InspectedCard card) {
    Map<String, Phrase> programs = new LinkedHashMap<>();
    Map<String, Phrase> modes = new LinkedHashMap<>();
    for (Block.Answers answers : card.plan().blocks(Block.Answers.class)) {
      for (AnswerRow row : answers.rows()) {
        if (row.answer() instanceof AnswerRow.WithCurrent settings) {
          programs.putIfAbsent(settings.program().words().words(), settings.program().words());
          settings.pedals().stream()
              .map(AnswerRow.OnPedal::mode)
              .forEach(mode -> modes.putIfAbsent(mode.words(), mode));
        }
      }
    }
    List<Finding> found = new ArrayList<>();
    namesAlike(programs, found);
    namesAlike(modes, found);
    return found;
  }

  private static void namesAlike(Map<String, Phrase> names, List<Finding> found) {
    List<Phrase> before = new ArrayList<>();
    for (Phrase name : names.values()) {
      before.stream()
          .filter(other -> distance(name.words(), other.words()) <= CLOSE)
          .forEach(other -> found.add(namesAlike(name, other)));
      before.add(name);
    }
  }

  private static Finding namesAlike(Phrase name, Phrase other) {
    return Finding.at(
            name.at(), "'" + name.words() + "' is easily mistaken for '" + other.words() + "'")
        .note(other.at(), "the other one")
        .help("give them names that differ by more than two letters");
  }

  /** How many letters to add, remove or change to make one word into the other. */
  private static int distance(String one, String other) {
    int[] last = new int[other.length() + 1];
    for (int j = 0; j <= other.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= one.length(); i++) {
      int[] next = new int[other.length() + 1];
      next[0] = i;
      for (int j = 1; j <= other.length(); j++) {
        int same = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
        next[j] = Math.min(last[j - 1] + same, 1 + Math.min(last[j], next[j - 1]));
      }
      last = next;
    }
    return last[other.length()];
  }
}
