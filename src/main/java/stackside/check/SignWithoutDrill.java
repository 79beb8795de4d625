package stackside.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.derive.circuit.FailureSign;
import stackside.derive.circuit.Mending;
import stackside.derive.circuit.Observed;
import stackside.derive.circuit.OutcomeClass;
import stackside.model.Kind;
import stackside.model.Response;
import stackside.model.Tone;
import stackside.source.Fault;
import stackside.source.Location;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds signs of a machine that lead to no drill. */
final class SignWithoutDrill implements Rule {
  private static final Fault FAULT =
      new Fault("sign-without-drill", Severity.ERROR, "a sign that a machine shows has no drill");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    if (analysis.unit().anyBroken(Kind.DRILL)) {
      return List.of();
    }
    Map<Tone, List<FailureSign>> lost = new LinkedHashMap<>();
    for (FailureSign sign : Consequences.of(analysis)) {
      if (sign.outcomeClass() != OutcomeClass.RIGHT
          && sign.fitting().isEmpty()
          && !meantByAnother(analysis, sign)) {
        lost.computeIfAbsent(sign.observed().tone(), it -> new ArrayList<>()).add(sign);
      }
    }
    return lost.values().stream().map(SignWithoutDrill::problem).toList();
  }

  /** A drill that mends it and whose own sign never comes has that sign wrong. */
  private static boolean meantByAnother(Analysis analysis, FailureSign sign) {
    return sign.drills().stream()
        .map(Mending::drill)
        .filter(drill -> drill.sign().ofMachine())
        .anyMatch(
            drill ->
                analysis.circuits().signs().stream()
                    .noneMatch(other -> other.fitting().contains(drill)));
  }

  /** One message for all that sound alike: one drill is missing. */
  private static Problem problem(List<FailureSign> alike) {
    FailureSign first = alike.get(0);
    Problem problem =
        FAULT.at(
            described(first),
            "no drill for %s begins with this: %s; it comes from %s"
                .formatted(
                    Wording.quoted(alike.stream().map(FailureSign::machine).toList()),
                    words(first.observed()),
                    Wording.list(
                        alike.stream().map(it -> "'" + it.fault().word() + "'").toList())));
    List<Location> others =
        alike.stream()
            .filter(it -> !it.machine().id().equals(first.machine().id()))
            .map(SignWithoutDrill::described)
            .distinct()
            .toList();
    for (Location other : others) {
      problem = problem.note(other, "likewise here");
    }
    return problem.help(
        "add a drill with this sign, or let the sign of one that mends it say less");
  }

  private static Location described(FailureSign sign) {
    return sign.condition()
        .flatMap(it -> Optional.ofNullable(sign.machine().answers().get(it)))
        .map(Response::at)
        .orElse(sign.machine().name().at());
  }

  private static String words(Observed observed) {
    List<String> words = new ArrayList<>();
    words.add(observed.tone() == Tone.NONE ? "no tone" : observed.tone().spoken() + " tone");
    observed.lamps().forEach((lamp, colour) -> words.add("lamp '" + lamp + "' " + colour));
    observed.display().ifPresent(text -> words.add("display '" + text + "'"));
    return String.join(", ", words);
  }
}
