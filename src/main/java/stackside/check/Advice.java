package stackside.check;

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
import stackside.source.Fault;
import stackside.source.Location;
import stackside.source.Problem;

/**
 * Everything that tells staff what to do: drills, checklists, techniques. English only: a unit that
 * writes another language is not read for dangerous advice.
 */
record Advice(Location at, String text) {

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

  /** A problem for each piece of advice of this kind. */
  static List<Problem> problems(
      Unit unit, Fault fault, Pattern pattern, String message, String help) {
    return of(unit).stream()
        .flatMap(
            advice ->
                advice
                    .given(pattern)
                    .map(words -> fault.at(advice.at(), message.formatted(words)).help(help))
                    .stream())
        .toList();
  }
}
