package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import stackside.render.plan.StepLine;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds steps that do not begin with a verb that somebody can act on. */
final class StepWithoutVerb implements CardRule {

  private static final Fault FAULT =
      new Fault("step-without-verb", Severity.ERROR, "a step does not begin with what to do");

  @Override
  public Fault fault() {
    return FAULT;
  }

  /**
   * Verbs that name something that hands, eyes or voice do. "Check" is not one: it says not how.
   */
  private static final Set<String> VERBS =
      Set.of(
          "add", "ask", "attach", "bring", "call", "change", "clean", "clip", "close", "compare",
          "connect", "count", "cover", "detach", "draw", "dry", "empty", "feel", "fetch", "fill",
          "find", "fit", "fix", "follow", "give", "hand", "hang", "hold", "keep", "label", "lay",
          "lift", "listen", "lock", "look", "lower", "move", "name", "note", "open", "peel", "pick",
          "place", "plug", "point", "pour", "press", "pull", "push", "put", "raise", "read",
          "release", "remove", "replace", "report", "rinse", "run", "say", "screw", "set", "shave",
          "show", "shut", "slide", "squeeze", "start", "stick", "stop", "swap", "switch", "take",
          "tell", "tighten", "touch", "trace", "try", "turn", "undo", "unplug", "wait", "warn",
          "wash", "watch", "wipe", "write");

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Problem> problems = new ArrayList<>();
    CardPhrases.steps(card.plan())
        .filter(step -> step.part() == StepLine.Part.CHECK)
        .filter(step -> !VERBS.contains(first(step)))
        .forEach(
            step ->
                problems.add(
                    FAULT
                        .at(
                            step.action().at(),
                            "the step '"
                                + step.action().words()
                                + "' does not begin with something to do")
                        .help(
                            "begin with what hands, eyes or voice do, such as look, trace, read")));
    return problems;
  }

  private static String first(StepLine step) {
    return step.action().words().split("[ \u00a0]", 2)[0].toLowerCase(Locale.ROOT);
  }
}
