package stackside.check;

import static stackside.check.Rule.error;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stackside.model.Checklist;
import stackside.model.ChecklistStep;
import stackside.model.Drill;
import stackside.model.DrillCheck;
import stackside.model.Fact;
import stackside.model.Profile;
import stackside.model.Unit;
import stackside.source.Location;

/**
 * Advice that harms, in drills, checklists and techniques. English only: a unit that writes another
 * language is not read for it.
 */
final class AdviceRules {

  private static final Pattern TEST_SPARK =
      Pattern.compile(
          "(test|trial)[- ]?(spark|fir(e|ing)|shot|burn|activat\\w*)"
              + "|spark(ing)? (test|it |against|on |off |to )"
              + "|(touch|tap|brush|scratch)\\w* (the |a )?\\w*\\s?(plate|pad|return electrode|neutral electrode|clamp|metal)"
              + "|activate (it )?(in|into) (the )?air");

  private static final String CONTROL =
      "(power|watts?|limit|level|effect|setting|settings|voltage|generator|machine)";

  private static final Pattern POWER_RAISE =
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

  private static final Pattern PLUG_MOVED =
      Pattern.compile(
          "(pull|push|swap|change|move|unplug|plug|replace|reseat|wiggle|turn|bend)\\b.*\\b(plug|cable|socket|connector|plate|lead)\\b.*"
              + "\\b(while|with|during|as)\\b.*\\b(pedal|foot) (is )?(down|pressed|on\\b|held)"
              + "|(press|pressing|hold|holding) (down )?the pedal (and|while|when) .*(plug|cable|socket|connector|plate|lead)\\b"
              + "|(while|during|with) (it is )?(activat|energi[sz]|under power|current on).*(plug|cable|socket)");

  private AdviceRules() {}

  static List<Rule<CheckedUnit>> rules() {
    return List.of(
        error(
            "test-spark-advised",
            "staff are told to test for a spark",
            AdviceRules::testSparkAdvised),
        error(
            "power-raise-advised",
            "staff are told to turn up the power",
            AdviceRules::powerRaiseAdvised),
        error(
            "plug-moved-under-power",
            "staff are told to move a plug while the pedal is pressed",
            AdviceRules::plugMovedUnderPower));
  }

  private static List<Finding> testSparkAdvised(CheckedUnit checked) {
    return advised(
        checked.unit(),
        TEST_SPARK,
        "'%s' tells staff to test for a spark",
        "check before use by looking, tracing or reading aloud");
  }

  private static List<Finding> powerRaiseAdvised(CheckedUnit checked) {
    return advised(
        checked.unit(),
        POWER_RAISE,
        "'%s' tells staff to turn up the power",
        "no effect means that the current is going elsewhere: say what to look at instead");
  }

  private static List<Finding> plugMovedUnderPower(CheckedUnit checked) {
    return advised(
        checked.unit(),
        PLUG_MOVED,
        "'%s' tells staff to move a plug under power",
        "tell staff to take the foot off first, in a sentence of its own");
  }

  /** What tells staff what to do. */
  private record Advice(Location at, String text) {
    /** A word before it in the same part of a sentence turns advice into a warning. */
    private static final Pattern WARNING =
        Pattern.compile("\\b(never|not|no|don't|without|instead of|avoid|rather than)\\b");

    /** All advice of a unit; what a drill says never to do is none. */
    static List<Advice> of(Unit unit) {
      List<Advice> all = new ArrayList<>();
      for (Drill drill : unit.drills()) {
        all.add(of(drill.makeSafe()));
        for (DrillCheck check : drill.checks()) {
          all.add(of(check.action()));
          check.see().map(Advice::of).ifPresent(all::add);
        }
      }
      for (Checklist list : unit.checklists()) {
        for (ChecklistStep step : list.steps()) {
          all.add(of(step.action()));
          step.see().map(Advice::of).ifPresent(all::add);
        }
      }
      for (Profile profile : unit.profiles()) {
        profile.technique().map(it -> new Advice(it.at(), it.plain())).ifPresent(all::add);
        profile.caution().map(it -> new Advice(it.at(), it.plain())).ifPresent(all::add);
        profile.cold().map(Advice::of).ifPresent(all::add);
      }
      return all;
    }

    private static Advice of(Fact<String> fact) {
      return new Advice(fact.at(), fact.value());
    }

    /** The words that give this advice, where they are not a warning against it. */
    Optional<String> given(Pattern pattern) {
      for (String clause : text.split("(?<=[.,:;!?])\\s+", -1)) {
        String words = clause.toLowerCase(Locale.ROOT);
        Matcher match = pattern.matcher(words);
        if (match.find() && !WARNING.matcher(words.substring(0, match.start())).find()) {
          return Optional.of(clause.substring(match.start(), match.end()));
        }
      }
      return Optional.empty();
    }
  }

  /** A finding for each piece of advice of this kind. */
  private static List<Finding> advised(Unit unit, Pattern pattern, String message, String help) {
    return Advice.of(unit).stream()
        .flatMap(
            advice ->
                advice
                    .given(pattern)
                    .map(words -> Finding.at(advice.at(), message.formatted(words)).help(help))
                    .stream())
        .toList();
  }
}
