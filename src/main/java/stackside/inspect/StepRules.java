package stackside.inspect;

import static stackside.check.Rule.error;
import static stackside.check.Rule.warning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.check.Finding;
import stackside.check.Rule;
import stackside.render.plan.Block;
import stackside.render.plan.Phrase;
import stackside.render.plan.StepLine;

/** Make-safe lines, steps and drills as the plan has them. */
final class StepRules {

  private static final int MAKE_SAFE_LINES = 2;

  private static final int MAKE_SAFE_LETTERS = 32;

  /** Verbs for what hands, eyes or voice do. "Check" is not one: it does not say how. */
  private static final Set<String> VERBS =
      Set.of(
          """
          add aim align ask attach bring call change clamp clean clip close compare connect cool
          count cover detach disconnect draw dry empty feel fetch fill find fit fix flush follow
          free give grasp grip hand hang hold insert inspect keep label lay leave let lift listen
          lock log look loosen lower mark measure move name note open peel pick place plug point
          position pour press pull push put raise read reconnect record release remove replace
          report return rinse run say screw seal secure send set shave show shut sign slide smooth
          squeeze stand start step stick stop swap switch take tape tell tighten tilt touch trace
          try turn twist uncoil undo unplug untangle wait warm warn wash watch weigh wipe withdraw
          write
          """
              .strip()
              .split("\\s+", -1));

  private static final Pattern SECOND_ACTION =
      Pattern.compile(
          "(?i)\\b(?:and|then)\\s+(?:then\\s+)?(?:ask|attach|call|change|close|connect|feel|find|hold|keep|label|lift|lock|look|move|name|open|peel|place|plug|point|press|pull|push|put|read|release|remove|replace|report|rinse|say|set|show|start|stick|stop|switch|take|tell|touch|trace|turn|unplug|wait|watch|wipe|write)\\b");

  private static final int MOST_WORDS = 20;

  private static final int FEW_WORDS = 12;

  private static final int MOST_STEPS = 9;

  private static final int FEW_SET_UP_STEPS = 6;

  private static final int FEW_DRILL_STEPS = 7;

  private static final int MOST_DRILLS = 2;

  private static final Pattern AWAY =
      Pattern.compile(
          "(?i)\\b(?:go (?:back )?to|(?:back|on|skip) to step|repeat (?:from )?step|see (?:page|overleaf|below|above|left|right|step|drill)|otherwise|if not,|turn over)\\b");

  private StepRules() {}

  static List<Rule<InspectedCard>> rules() {
    return List.of(
        error(
            "make-safe-missing",
            "cards do not say what to do first, whatever is wrong",
            StepRules::makeSafeMissing),
        error(
            "make-safe-too-long",
            "the make-safe words are more than two lines of 32 letters",
            StepRules::makeSafeTooLong),
        error(
            "step-without-verb",
            "a step does not begin with an action",
            StepRules::stepWithoutVerb),
        error(
            "step-with-two-actions",
            "a step asks for more than one action",
            StepRules::stepWithTwoActions),
        error("step-too-long", "a step has more than 20 words", StepRules::stepTooLong),
        warning("step-long", "a step has more than 12 words", StepRules::stepLong),
        error(
            "too-many-steps", "a list on a card has more than nine steps", StepRules::tooManySteps),
        warning(
            "many-steps",
            "a list on a card has more steps than people easily remember",
            StepRules::manySteps),
        error(
            "too-many-drills-on-card",
            "a card has more than two drills",
            StepRules::tooManyDrillsOnCard),
        error(
            "drill-without-sign",
            "a drill on a card does not say when it is needed",
            StepRules::drillWithoutSign),
        error(
            "drill-branches",
            "a drill on a card sends the reader elsewhere",
            StepRules::drillBranches));
  }

  private static List<Finding> makeSafeMissing(InspectedCard card) {
    return card.plan().blocks(Block.MakeSafe.class).isEmpty()
        ? List.of(
            Finding.at(
                    card.publication().unit().details().at(),
                    "no card says what to do first, whatever is wrong")
                .help("write one or two lines under `make-safe:` in unit.yaml"))
        : List.of();
  }

  private static List<Finding> makeSafeTooLong(InspectedCard card) {
    List<Phrase> lines =
        card.plan().blocks(Block.MakeSafe.class).stream().flatMap(Block.MakeSafe::phrases).toList();
    List<Finding> found = new ArrayList<>();
    if (lines.size() > MAKE_SAFE_LINES) {
      found.add(
          Finding.at(
                  lines.get(MAKE_SAFE_LINES).at(), "there are " + lines.size() + " make-safe lines")
              .help("say it in two lines; anything else belongs in a drill"));
    }
    lines.stream()
        .filter(line -> line.words().length() > MAKE_SAFE_LETTERS)
        .forEach(
            line ->
                found.add(
                    Finding.at(
                            line.at(),
                            "the make-safe line '"
                                + line.words()
                                + "' has "
                                + line.words().length()
                                + " letters, but a line read from afar has room for "
                                + MAKE_SAFE_LETTERS)
                        .help("say it in fewer words, or use the second line")));
    return found;
  }

  private static List<Finding> stepWithoutVerb(InspectedCard card) {
    Set<String> own = ownVerbs(card);
    List<Finding> found = new ArrayList<>();
    CardPhrases.steps(card.plan())
        .filter(step -> step.part() == StepLine.Part.CHECK)
        .filter(step -> !VERBS.contains(firstWord(step)) && !own.contains(firstWord(step)))
        .forEach(
            step ->
                found.add(
                    Finding.at(
                            step.action().at(),
                            "the step '"
                                + step.action().words()
                                + "' does not begin with an action")
                        .help(
                            "begin with what hands, eyes or voice do, such as look, trace or read;"
                                + " add verbs of your own under `verbs:` in unit.yaml")));
    return found;
  }

  /** The verbs that the unit adds, in small letters. */
  private static Set<String> ownVerbs(InspectedCard card) {
    return card.publication().unit().details().verbs().stream()
        .map(verb -> verb.value().toLowerCase(Locale.ROOT))
        .collect(Collectors.toUnmodifiableSet());
  }

  private static String firstWord(StepLine step) {
    return step.action().words().split("[ \u00a0]", 2)[0].toLowerCase(Locale.ROOT);
  }

  private static List<Finding> stepWithTwoActions(InspectedCard card) {
    List<Finding> found = new ArrayList<>();
    CardPhrases.steps(card.plan())
        .filter(step -> step.part() == StepLine.Part.CHECK)
        .map(StepLine::action)
        .filter(action -> SECOND_ACTION.matcher(action.words()).find())
        .forEach(
            action ->
                found.add(
                    Finding.at(
                            action.at(), "the step '" + action.words() + "' asks for two actions")
                        .help("make each a step of its own")));
    return found;
  }

  private static List<Finding> stepTooLong(InspectedCard card) {
    return longSteps(card, words -> words > MOST_WORDS);
  }

  private static List<Finding> stepLong(InspectedCard card) {
    return longSteps(card, words -> words > FEW_WORDS && words <= MOST_WORDS);
  }

  private static List<Finding> longSteps(InspectedCard card, IntPredicate isLong) {
    return CardPhrases.steps(card.plan())
        .map(StepLine::action)
        .filter(action -> isLong.test(action.length()))
        .map(
            action ->
                Finding.at(
                        action.at(),
                        "the step '" + action.words() + "' has " + action.length() + " words")
                    .help("say it in fewer words, or make two steps of it"))
        .toList();
  }

  private static List<Finding> tooManySteps(InspectedCard card) {
    return longLists(card, MOST_STEPS, MOST_STEPS, Integer.MAX_VALUE);
  }

  private static List<Finding> manySteps(InspectedCard card) {
    return longLists(card, FEW_SET_UP_STEPS, FEW_DRILL_STEPS, MOST_STEPS);
  }

  /**
   * Lists that have too many steps.
   *
   * @param setUp how many steps of a set-up are few enough
   * @param drill how many steps of a drill are few enough
   * @param most from how many on another rule speaks
   */
  private static List<Finding> longLists(InspectedCard card, int setUp, int drill, int most) {
    Stream<Finding> setUps =
        card.plan().blocks(Block.SetUp.class).stream()
            .flatMap(list -> longList(list.heading(), list.steps(), setUp, most));
    Stream<Finding> drills =
        card.plan().blocks(Block.Drilled.class).stream()
            .flatMap(list -> longList(list.title(), list.steps(), drill, most));
    return Stream.concat(setUps, drills).toList();
  }

  private static Stream<Finding> longList(
      Phrase title, List<StepLine> steps, int enough, int most) {
    if (steps.size() <= enough || steps.size() > most) {
      return Stream.of();
    }
    return Stream.of(
        Finding.at(
                steps.get(enough).action().at(),
                "'"
                    + title.words()
                    + "' has "
                    + steps.size()
                    + " steps; from here on it is too long")
            .help("leave out what is obvious at a glance, or make two lists"));
  }

  private static List<Finding> tooManyDrillsOnCard(InspectedCard card) {
    List<Block.Drilled> drills = card.plan().blocks(Block.Drilled.class);
    return drills.size() <= MOST_DRILLS
        ? List.of()
        : List.of(
            Finding.at(
                    drills.get(MOST_DRILLS).title().at(),
                    card.name()
                        + " has "
                        + drills.size()
                        + " drills, but an A4 page has room for 2")
                .help("write `on-card: yes` in only two drills for this machine"));
  }

  private static List<Finding> drillWithoutSign(InspectedCard card) {
    List<Finding> found = new ArrayList<>();
    for (Block.Drilled drill : card.plan().blocks(Block.Drilled.class)) {
      if (drill.sign().words().isBlank()) {
        found.add(
            Finding.at(
                    drill.sign().at(),
                    "the drill '" + drill.title().words() + "' names nothing that is seen or heard")
                .help("give its sign: tone, lamps, display or tissue"));
      }
    }
    return found;
  }

  private static List<Finding> drillBranches(InspectedCard card) {
    List<Finding> found = new ArrayList<>();
    CardPhrases.steps(card.plan())
        .filter(step -> step.part() == StepLine.Part.CHECK)
        .flatMap(StepLine::phrases)
        .filter(phrase -> AWAY.matcher(phrase.words()).find())
        .forEach(phrase -> found.add(drillBranches(phrase)));
    return found;
  }

  private static Finding drillBranches(Phrase phrase) {
    return Finding.at(
            phrase.at(), "'" + phrase.words() + "' sends the reader away from the next step")
        .help("write steps that are read one after the other; branches belong on the site");
  }
}
