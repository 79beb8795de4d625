package stackside.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.model.Fact;
import stackside.model.Machine;
import stackside.model.Settings;
import stackside.model.SlotRange;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds program slots that the machine does not have. */
final class SlotOutsidePrograms implements Rule {
  private static final Fault FAULT =
      new Fault(
          "slot-outside-programs", Severity.ERROR, "a program slot is none that the machine has");

  /** A slot of a machine where something names it. */
  private record Named(Machine machine, Fact<Integer> slot) {}

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return named(analysis.unit())
        .filter(named -> !exists(named))
        .collect(
            Collectors.groupingBy(
                SlotOutsidePrograms::mistake, LinkedHashMap::new, Collectors.toList()))
        .values()
        .stream()
        .map(SlotOutsidePrograms::problem)
        .toList();
  }

  private static Stream<Named> named(Unit unit) {
    Stream<Named> inProfiles =
        unit.profiles().stream()
            .flatMap(
                profile ->
                    profile.settings().flatMap(Settings::program).stream()
                        .map(it -> new Named(profile.machine().value(), it.slot())));
    Stream<Named> atSockets =
        unit.machines().stream()
            .flatMap(
                machine ->
                    machine.sockets().stream()
                        .flatMap(socket -> socket.programOnPlugging().stream())
                        .map(slot -> new Named(machine, slot)));
    Stream<Named> inReadings =
        unit.programReadings().stream()
            .map(it -> new Named(it.asset().value().machine().value(), it.slot()));
    return Stream.concat(inProfiles, Stream.concat(atSockets, inReadings));
  }

  private static boolean exists(Named named) {
    return named
        .machine()
        .programs()
        .map(it -> it.value().holds(named.slot().value()))
        .orElse(false);
  }

  /** The same slot typed wrong, or, on a machine without programs, any slot. */
  private static List<Object> mistake(Named named) {
    return named.machine().programs().isPresent()
        ? List.of(named.machine().id(), named.slot().value())
        : List.of(named.machine().id());
  }

  private static Problem problem(List<Named> same) {
    Named first = same.get(0);
    String machine = Wording.quoted(first.machine());
    String places = same.size() == 1 ? "" : ", which is named in " + same.size() + " places";
    if (first.machine().programs().isEmpty()) {
      return FAULT
          .at(
              first.slot().at(),
              machine
                  + " has no stored programs, and one is named here"
                  + (same.size() == 1 ? "" : " and in " + (same.size() - 1) + " more places"))
          .note(first.machine().at(), "the machine's description")
          .help("take the program out, or add 'programs' to the machine's description");
    }
    Fact<SlotRange> programs = first.machine().programs().orElseThrow();
    return FAULT
        .at(first.slot().at(), machine + " has no program " + first.slot().value() + places)
        .note(programs.at(), "the machine's description says " + programs.value().text())
        .help("correct the slot, or the machine's description if that is wrong");
  }
}
