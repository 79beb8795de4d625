package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
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
          "add",
          "aim",
          "align",
          "ask",
          "attach",
          "bring",
          "call",
          "change",
          "clamp",
          "clean",
          "clip",
          "close",
          "compare",
          "connect",
          "cool",
          "count",
          "cover",
          "detach",
          "disconnect",
          "draw",
          "dry",
          "empty",
          "feel",
          "fetch",
          "fill",
          "find",
          "fit",
          "fix",
          "flush",
          "follow",
          "free",
          "give",
          "grasp",
          "grip",
          "hand",
          "hang",
          "hold",
          "insert",
          "inspect",
          "keep",
          "label",
          "lay",
          "leave",
          "let",
          "lift",
          "listen",
          "lock",
          "log",
          "look",
          "loosen",
          "lower",
          "mark",
          "measure",
          "move",
          "name",
          "note",
          "open",
          "peel",
          "pick",
          "place",
          "plug",
          "point",
          "position",
          "pour",
          "press",
          "pull",
          "push",
          "put",
          "raise",
          "read",
          "reconnect",
          "record",
          "release",
          "remove",
          "replace",
          "report",
          "return",
          "rinse",
          "run",
          "say",
          "screw",
          "seal",
          "secure",
          "send",
          "set",
          "shave",
          "show",
          "shut",
          "sign",
          "slide",
          "smooth",
          "squeeze",
          "stand",
          "start",
          "step",
          "stick",
          "stop",
          "swap",
          "switch",
          "take",
          "tape",
          "tell",
          "tighten",
          "tilt",
          "touch",
          "trace",
          "try",
          "turn",
          "twist",
          "uncoil",
          "undo",
          "unplug",
          "untangle",
          "wait",
          "warm",
          "warn",
          "wash",
          "watch",
          "weigh",
          "wipe",
          "withdraw",
          "write");

  @Override
  public List<Problem> problems(InspectedCard card) {
    Set<String> own = ownVerbs(card);
    List<Problem> problems = new ArrayList<>();
    CardPhrases.steps(card.plan())
        .filter(step -> step.part() == StepLine.Part.CHECK)
        .filter(step -> !VERBS.contains(first(step)) && !own.contains(first(step)))
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
                            "begin with what hands, eyes or voice do, such as look, trace, read;"
                                + " a verb of your own goes into `verbs:` in unit.yaml")));
    return problems;
  }

  /** The verbs that the unit adds, in small letters. */
  private static Set<String> ownVerbs(InspectedCard card) {
    return card.publication().unit().details().verbs().stream()
        .map(verb -> verb.value().toLowerCase(Locale.ROOT))
        .collect(Collectors.toUnmodifiableSet());
  }

  private static String first(StepLine step) {
    return step.action().words().split("[ \u00a0]", 2)[0].toLowerCase(Locale.ROOT);
  }
}
