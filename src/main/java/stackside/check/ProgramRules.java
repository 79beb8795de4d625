package stackside.check;

import static stackside.check.Rule.error;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.model.Fact;
import stackside.model.Machine;
import stackside.model.PedalSetting;
import stackside.model.PedalUse;
import stackside.model.Profile;
import stackside.model.SelectionKind;
import stackside.model.Settings;
import stackside.model.SlotRange;
import stackside.model.Socket;
import stackside.model.StoredProgram;
import stackside.model.Unit;

/** Stored programs and their slots. */
final class ProgramRules {

  /** A slot of a machine where something names it. */
  private record NamedSlot(Machine machine, Fact<Integer> slot) {}

  /** What a profile expects its slot to hold. */
  private record SlotContents(Object shownAs, Object socket, Object yellow, Object blue) {

    static SlotContents of(Profile profile) {
      Settings settings = profile.settings().orElseThrow();
      return new SlotContents(
          settings.program().orElseThrow().shownAs().value(),
          settings.socket().value().id(),
          contents(settings.yellow()),
          contents(settings.blue()));
    }

    private static Object contents(PedalUse use) {
      return use.setting()
          .map(
              it ->
                  List.of(
                      it.mode().value().id(),
                      it.level().map(Fact::value),
                      it.limit().map(Fact::value)))
          .orElse(List.of());
    }

    List<String> differences(SlotContents other) {
      List<String> found = new ArrayList<>();
      compare(found, "a different name on the display", shownAs, other.shownAs);
      compare(found, "a different socket", socket, other.socket);
      compare(found, "a different setting on yellow", yellow, other.yellow);
      compare(found, "a different setting on blue", blue, other.blue);
      return found;
    }

    private static void compare(List<String> found, String words, Object one, Object other) {
      if (!one.equals(other)) {
        found.add(words);
      }
    }
  }

  private ProgramRules() {}

  static List<Rule<CheckedUnit>> rules() {
    return List.of(
        error(
            "program-missing",
            "a machine that selects by program is used without a stored program",
            ProgramRules::programMissing),
        error(
            "slot-outside-programs",
            "a program slot is one that the machine does not have",
            ProgramRules::slotOutsidePrograms),
        error(
            "slot-with-two-contents",
            "two profiles expect different things of one program slot",
            ProgramRules::slotWithTwoContents),
        error(
            "program-not-of-socket",
            "the profile's program belongs to another socket",
            ProgramRules::programNotOfSocket));
  }

  private static List<Finding> programMissing(CheckedUnit checked) {
    return checked.unit().profiles().stream()
        .filter(profile -> selectsByProgram(profile.machine().value()))
        .flatMap(profile -> programMissing(profile).stream())
        .toList();
  }

  private static boolean selectsByProgram(Machine machine) {
    return switch (machine.selectsSocket().value()) {
      case BY_PROGRAM, BY_PLUGGING_IN -> machine.programs().isPresent();
      case BY_BUTTON, BY_FOOT_SWITCH, FIXED -> false;
    };
  }

  private static Optional<Finding> programMissing(Profile profile) {
    Machine machine = profile.machine().value();
    return profile
        .settings()
        .filter(settings -> settings.program().isEmpty())
        .map(
            settings ->
                Finding.at(
                        settings.socket().at(),
                        "%s makes a socket live %s, but no program is named"
                            .formatted(
                                Wording.quoted(machine), machine.selectsSocket().value().spoken()))
                    .note(machine.selectsSocket().at(), "where the machine's description says so")
                    .help("add 'program' with its slot and the name that the display shows"));
  }

  private static List<Finding> slotOutsidePrograms(CheckedUnit checked) {
    return namedSlots(checked.unit())
        .filter(named -> !exists(named))
        .collect(
            Collectors.groupingBy(ProgramRules::mistake, LinkedHashMap::new, Collectors.toList()))
        .values()
        .stream()
        .map(ProgramRules::slotOutsidePrograms)
        .toList();
  }

  private static Stream<NamedSlot> namedSlots(Unit unit) {
    Stream<NamedSlot> inProfiles =
        unit.profiles().stream()
            .flatMap(
                profile ->
                    profile.settings().flatMap(Settings::program).stream()
                        .map(it -> new NamedSlot(profile.machine().value(), it.slot())));
    Stream<NamedSlot> atSockets =
        unit.machines().stream()
            .flatMap(
                machine ->
                    machine.sockets().stream()
                        .flatMap(socket -> socket.programOnPlugging().stream())
                        .map(slot -> new NamedSlot(machine, slot)));
    Stream<NamedSlot> inReadings =
        unit.programReadings().stream()
            .map(it -> new NamedSlot(it.asset().value().machine().value(), it.slot()));
    return Stream.concat(inProfiles, Stream.concat(atSockets, inReadings));
  }

  private static boolean exists(NamedSlot named) {
    return named
        .machine()
        .programs()
        .map(it -> it.value().holds(named.slot().value()))
        .orElse(false);
  }

  /** The same slot mistyped or, on a machine without programs, any slot. */
  private static List<Object> mistake(NamedSlot named) {
    return named.machine().programs().isPresent()
        ? List.of(named.machine().id(), named.slot().value())
        : List.of(named.machine().id());
  }

  private static Finding slotOutsidePrograms(List<NamedSlot> same) {
    NamedSlot first = same.get(0);
    String machine = Wording.quoted(first.machine());
    String places = same.size() == 1 ? "" : ", which is named in " + same.size() + " places";
    if (first.machine().programs().isEmpty()) {
      return Finding.at(
              first.slot().at(),
              machine
                  + " has no stored programs, but one is named here"
                  + (same.size() == 1 ? "" : " and in " + (same.size() - 1) + " more places"))
          .note(first.machine().at(), "the machine's description")
          .help("remove the program, or add 'programs' to the machine's description");
    }
    Fact<SlotRange> programs = first.machine().programs().orElseThrow();
    return Finding.at(
            first.slot().at(), machine + " has no program " + first.slot().value() + places)
        .note(programs.at(), "the machine's description says " + programs.value().text())
        .help("correct the slot, or the machine's description if that is wrong");
  }

  private static List<Finding> slotWithTwoContents(CheckedUnit checked) {
    List<Finding> found = new ArrayList<>();
    for (Machine machine : checked.unit().machines()) {
      checked.unit().profilesOn(machine).stream()
          .filter(ProgramRules::isClear)
          .collect(
              Collectors.groupingBy(
                  it -> it.settings().orElseThrow().program().orElseThrow().slot().value(),
                  LinkedHashMap::new,
                  Collectors.toList()))
          .values()
          .forEach(same -> found.addAll(oddContents(same)));
    }
    return found;
  }

  /** A setting that cannot be made is reported by another rule. */
  private static boolean isClear(Profile profile) {
    return profile
        .settings()
        .filter(it -> it.program().isPresent() && it.belongTogether())
        .filter(it -> it.assigned().stream().allMatch(PedalSetting::canBeSet))
        .isPresent();
  }

  /**
   * Those that differ from what most profiles expect. If the numbers are equal, those that differ
   * from the first.
   */
  private static List<Finding> oddContents(List<Profile> same) {
    Map<SlotContents, List<Profile>> views =
        same.stream()
            .collect(
                Collectors.groupingBy(SlotContents::of, LinkedHashMap::new, Collectors.toList()));
    Profile usual = same.get(0);
    for (List<Profile> view : views.values()) {
      if (view.size() > views.getOrDefault(SlotContents.of(usual), List.of()).size()) {
        usual = view.get(0);
      }
    }
    List<Finding> found = new ArrayList<>();
    for (Profile profile : same) {
      List<String> differences = SlotContents.of(profile).differences(SlotContents.of(usual));
      if (!differences.isEmpty()) {
        found.add(slotWithTwoContents(profile, usual, differences));
      }
    }
    return found;
  }

  private static Finding slotWithTwoContents(Profile odd, Profile usual, List<String> differences) {
    StoredProgram program = odd.settings().orElseThrow().program().orElseThrow();
    StoredProgram other = usual.settings().orElseThrow().program().orElseThrow();
    return Finding.at(
            program.slot().at(),
            "profile '%s' expects %s in slot %s, but a slot holds one program"
                .formatted(usual.id().slug(), Wording.list(differences), program.slot().value()))
        .note(other.slot().at(), "the other profile")
        .help("give one of them a slot of its own, or make the two agree");
  }

  /** A program that no plug brings up is chosen by hand after plugging in, which is fine. */
  private static List<Finding> programNotOfSocket(CheckedUnit checked) {
    return checked.unit().profiles().stream()
        .filter(it -> it.machine().value().selectsSocket().value() == SelectionKind.BY_PLUGGING_IN)
        .flatMap(
            profile ->
                profile.settings().stream()
                    .filter(Settings::belongTogether)
                    .flatMap(
                        settings ->
                            programNotOfSocket(profile.machine().value(), settings).stream()))
        .toList();
  }

  private static Optional<Finding> programNotOfSocket(Machine machine, Settings settings) {
    Socket socket = settings.socket().value();
    return settings
        .program()
        .map(StoredProgram::slot)
        .filter(slot -> !bringsUp(socket, slot.value()))
        .flatMap(
            slot ->
                machine.sockets().stream()
                    .filter(other -> bringsUp(other, slot.value()))
                    .findFirst()
                    .map(other -> programNotOfSocket(socket, slot, other)));
  }

  private static boolean bringsUp(Socket socket, int slot) {
    return socket.programOnPlugging().filter(brought -> brought.value() == slot).isPresent();
  }

  private static Finding programNotOfSocket(Socket socket, Fact<Integer> slot, Socket other) {
    return Finding.at(
            slot.at(),
            "the profile names program %s for socket %s, but plugging into %s brings up program %s"
                .formatted(
                    slot.value(), Wording.quoted(socket), Wording.quoted(other), slot.value()))
        .note(
            other.programOnPlugging().orElseThrow().at(), "where the machine's description says so")
        .help("correct the slot or the socket, or the machine's description");
  }
}
