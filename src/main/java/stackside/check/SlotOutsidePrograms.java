package stackside.check;

import java.util.ArrayList;
import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Fact;
import stackside.model.Machine;
import stackside.model.Profile;
import stackside.model.ProgramReading;
import stackside.model.Settings;
import stackside.model.SlotRange;
import stackside.model.Socket;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds program slots that the machine does not have. */
final class SlotOutsidePrograms implements Rule {
  private static final Fault FAULT =
      new Fault(
          "slot-outside-programs", Severity.ERROR, "a program slot is none that the machine has");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    Unit unit = analysis.unit();
    List<Problem> found = new ArrayList<>();
    for (Profile profile : unit.profiles()) {
      profile
          .settings()
          .flatMap(Settings::program)
          .ifPresent(program -> check(profile.machine().value(), program.slot(), found));
    }
    for (Machine machine : unit.machines()) {
      for (Socket socket : machine.sockets()) {
        socket.programOnPlugging().ifPresent(slot -> check(machine, slot, found));
      }
    }
    for (ProgramReading reading : unit.programReadings()) {
      check(reading.asset().value().machine().value(), reading.slot(), found);
    }
    return found;
  }

  private static void check(Machine machine, Fact<Integer> slot, List<Problem> found) {
    if (machine.programs().isEmpty()) {
      found.add(
          FAULT
              .at(slot.at(), Wording.quoted(machine) + " has no stored programs")
              .note(machine.at(), "the machine's description")
              .help("take the program out, or add 'programs' to the machine's description"));
    } else if (!machine.programs().orElseThrow().value().holds(slot.value())) {
      Fact<SlotRange> programs = machine.programs().orElseThrow();
      found.add(
          FAULT
              .at(slot.at(), Wording.quoted(machine) + " has no program " + slot.value())
              .note(programs.at(), "the machine's description says " + programs.value().text())
              .help("correct the slot, or the machine's description if that is wrong"));
    }
  }
}
