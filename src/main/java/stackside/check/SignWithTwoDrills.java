package stackside.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.derive.circuit.FailureSign;
import stackside.model.Drill;
import stackside.model.Machine;
import stackside.model.ThingId;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds signs that two drills of one machine begin with. */
final class SignWithTwoDrills implements Rule {
  private static final Fault FAULT =
      new Fault("sign-with-two-drills", Severity.ERROR, "two drills begin with the same sign");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    Map<ThingId, Problem> found = new LinkedHashMap<>();
    for (FailureSign sign : Consequences.of(analysis)) {
      for (int i = 1; i < sign.fitting().size(); i++) {
        Drill first = sign.fitting().get(0);
        Drill other = sign.fitting().get(i);
        if (lampsExist(sign.machine(), first, other) && !first.sign().contradicts(other.sign())) {
          found.putIfAbsent(other.id(), problem(sign, first, other));
        }
      }
    }
    return List.copyOf(found.values());
  }

  private static boolean lampsExist(Machine machine, Drill... drills) {
    return Stream.of(drills)
        .flatMap(drill -> drill.sign().lamps().keySet().stream())
        .allMatch(lamp -> machine.lamp(lamp).isPresent());
  }

  private static Problem problem(FailureSign sign, Drill first, Drill other) {
    return FAULT
        .at(
            other.sign().at(),
            "on %s this sign comes where %s begins too, as with '%s'"
                .formatted(
                    Wording.quoted(sign.machine()), Wording.quoted(first), sign.fault().word()))
        .note(first.sign().at(), "the other sign")
        .help("make one drill of the two, or let each sign say what tells them apart");
  }
}
