package stackside.check;

import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.model.Machine;
import stackside.model.Profile;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds settings without a stored program on machines that select by program. */
final class ProgramMissing implements Rule {
  private static final Fault FAULT =
      new Fault(
          "program-missing",
          Severity.ERROR,
          "a machine that selects by program is used without a stored program");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().profiles().stream()
        .filter(profile -> selectsByProgram(profile.machine().value()))
        .flatMap(profile -> problem(profile).stream())
        .toList();
  }

  private static boolean selectsByProgram(Machine machine) {
    return switch (machine.selectsSocket().value()) {
      case BY_PROGRAM, BY_PLUGGING_IN -> machine.programs().isPresent();
      case BY_BUTTON, BY_FOOT_SWITCH, FIXED -> false;
    };
  }

  private static Optional<Problem> problem(Profile profile) {
    Machine machine = profile.machine().value();
    return profile
        .settings()
        .filter(settings -> settings.program().isEmpty())
        .map(
            settings ->
                FAULT
                    .at(
                        settings.socket().at(),
                        "%s makes a socket live %s, and no program is named"
                            .formatted(
                                Wording.quoted(machine), machine.selectsSocket().value().spoken()))
                    .note(machine.selectsSocket().at(), "where the machine's description says so")
                    .help("add 'program' with its slot and the name that the display shows"));
  }
}
