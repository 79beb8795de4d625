package stackside.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.model.Checklist;
import stackside.model.ChecklistKind;
import stackside.model.EnergyKind;
import stackside.model.Kind;
import stackside.model.Machine;
import stackside.model.Profile;
import stackside.model.SingleFault;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds machines that work with argon whose set-up looks at no cylinder. */
final class ArgonCylinderUnchecked implements Rule {
  private static final Fault FAULT =
      new Fault(
          "argon-cylinder-unchecked",
          Severity.ERROR,
          "argon is approved, and the set-up does not look at the cylinder");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    Unit unit = analysis.unit();
    if (unit.anyBroken(Kind.CHECKLIST)) {
      return List.of();
    }
    List<Problem> found = new ArrayList<>();
    for (Machine machine : unit.machines()) {
      List<Checklist> setUps =
          unit.checklistsFor(machine).stream()
              .filter(list -> list.kind().value() == ChecklistKind.SET_UP)
              .toList();
      Optional<Profile> argon =
          unit.profilesOn(machine).stream().filter(ArgonCylinderUnchecked::usesArgon).findFirst();
      if (argon.isPresent() && !setUps.isEmpty() && setUps.stream().noneMatch(it -> looks(it))) {
        found.add(problem(machine, setUps.get(0), argon.orElseThrow()));
      }
    }
    return found;
  }

  private static boolean usesArgon(Profile profile) {
    return profile.pedalSettings().stream()
        .anyMatch(it -> it.mode().value().kind().value() == EnergyKind.ARGON);
  }

  private static boolean looks(Checklist checklist) {
    return checklist.steps().stream()
        .flatMap(step -> step.guards().stream())
        .anyMatch(guard -> guard.value() == SingleFault.ARGON_EMPTY);
  }

  private static Problem problem(Machine machine, Checklist checklist, Profile argon) {
    return FAULT
        .at(
            checklist.kind().at(),
            "%s works with argon, and no step of this set-up guards against an empty cylinder"
                .formatted(Wording.quoted(machine)))
        .note(argon.at(), "a profile with argon")
        .help("add a step that reads the cylinder's gauge, with 'guards: [argon-empty]'");
  }
}
