package stackside.check;

import static stackside.check.Rule.error;
import static stackside.check.Rule.warning;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.program.ReadingDay;
import stackside.model.Fact;
import stackside.model.Machine;
import stackside.model.Mode;
import stackside.model.OutputCheck;
import stackside.model.PedalSetting;
import stackside.model.ProgramReading;
import stackside.model.ServiceEventKind;
import stackside.model.Socket;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.quantity.LoadRange;

/** Program readings, output checks and service events. */
final class RecordRules {

  private RecordRules() {}

  static List<Rule<CheckedUnit>> rules() {
    return List.of(
        error(
            "reading-cannot-be",
            "a program reading shows a setting that the machine cannot have",
            RecordRules::readingCannotBe),
        error(
            "slot-read-two-ways",
            "one slot has two different readings on one day",
            RecordRules::slotReadTwoWays),
        warning(
            "slot-read-in-part",
            "only one pedal of a slot was read, but both of the other slots",
            RecordRules::slotReadInPart),
        error(
            "output-check-cannot-be",
            "an output check was made at a setting that the machine cannot have",
            RecordRules::outputCheckCannotBe),
        error(
            "update-without-version",
            "a software update does not say to which version",
            RecordRules::updateWithoutVersion),
        error(
            "test-load-outside-range",
            "an output was measured at a load outside the machine's published range",
            RecordRules::testLoadOutsideRange));
  }

  private static List<Finding> readingCannotBe(CheckedUnit checked) {
    return checked.unit().programReadings().stream()
        .flatMap(reading -> readingCannotBe(checked.unit(), reading).stream())
        .toList();
  }

  private static Optional<Finding> readingCannotBe(Unit unit, ProgramReading reading) {
    Optional<Finding> setting =
        asApproved(unit, reading) ? Optional.empty() : readingCannotBe(reading);
    return setting.or(() -> reading.mode().flatMap(mode -> wrongSocket(unit, reading, mode)));
  }

  /**
   * A mode comes out of the sockets of its kind. If a profile says otherwise, the profile is wrong.
   */
  private static Optional<Finding> wrongSocket(Unit unit, ProgramReading reading, Fact<Mode> mode) {
    Socket socket = reading.socket().value();
    boolean fits = socket.kind().value().energy().equals(Optional.of(mode.value().kind().value()));
    if (fits || isApproved(unit, reading, mode.value())) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.at(
                mode.at(),
                "slot %s was read with %s for socket %s, but a %s mode cannot come out there"
                    .formatted(
                        reading.slot().value(),
                        Wording.quoted(mode.value()),
                        Wording.quoted(socket),
                        mode.value().kind().value().spoken()))
            .note(socket.kind().at(), "the machine's description of the socket")
            .help("read the slot again, or correct what was mistyped"));
  }

  private static boolean isApproved(Unit unit, ProgramReading reading, Mode mode) {
    ThingId socket = reading.socket().value().id();
    return unit.profilesOn(reading.asset().value().machine().value()).stream()
        .flatMap(profile -> profile.settings().stream())
        .filter(settings -> settings.socket().value().id().equals(socket))
        .flatMap(settings -> settings.assigned().stream())
        .anyMatch(setting -> setting.mode().value().id().equals(mode.id()));
  }

  /** If a profile says the same, the mistake is the profile's or the description's. */
  private static boolean asApproved(Unit unit, ProgramReading reading) {
    return unit.profilesOn(reading.asset().value().machine().value()).stream()
        .flatMap(profile -> profile.pedalSettings().stream())
        .anyMatch(
            setting ->
                reading
                        .mode()
                        .map(it -> it.value().id())
                        .equals(Optional.of(setting.mode().value().id()))
                    && reading.level().map(Fact::value).equals(setting.level().map(Fact::value))
                    && reading.limit().map(Fact::value).equals(setting.limit().map(Fact::value)));
  }

  private static Optional<Finding> readingCannotBe(ProgramReading reading) {
    return reading
        .mode()
        .map(mode -> new PedalSetting(reading.at(), mode, reading.level(), reading.limit()))
        .filter(setting -> !setting.canBeSet())
        .map(
            setting ->
                Finding.at(
                        setting
                            .limit()
                            .map(Fact::at)
                            .or(() -> setting.level().map(Fact::at))
                            .orElse(setting.mode().at()),
                        "slot %s was read with %s%s%s, which cannot be set like that"
                            .formatted(
                                reading.slot().value(),
                                Wording.quoted(setting.mode().value()),
                                setting
                                    .level()
                                    .map(
                                        it ->
                                            " at "
                                                + Wording.level(setting.mode().value(), it.value()))
                                    .orElse(""),
                                setting.limit().map(it -> " and " + it.value()).orElse("")))
                    .note(setting.mode().value().at(), "the machine's description of the mode")
                    .help("read the slot again, or correct what was mistyped"));
  }

  /**
   * Finds readings of one slot on one day that cannot both be right: two names or sockets for the
   * slot, or two settings for one pedal.
   */
  private static List<Finding> slotReadTwoWays(CheckedUnit checked) {
    return ReadingDay.of(checked.unit()).stream()
        .flatMap(day -> day.slots().stream())
        .flatMap(rows -> slotReadTwoWays(rows).stream())
        .toList();
  }

  /** One finding for each slot: the rows after the first mistyped one add nothing. */
  private static Optional<Finding> slotReadTwoWays(List<ProgramReading> rows) {
    for (int later = 1; later < rows.size(); later++) {
      for (ProgramReading earlier : rows.subList(0, later)) {
        Optional<Finding> finding = difference(earlier, rows.get(later));
        if (finding.isPresent()) {
          return finding;
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Finding> difference(ProgramReading earlier, ProgramReading later) {
    if (!earlier.shownAs().value().equals(later.shownAs().value())) {
      return Optional.of(
          slotReadTwoWays(
              later,
              later.shownAs(),
              earlier.shownAs(),
              "the display showed '%s' and '%s'"
                  .formatted(earlier.shownAs().value(), later.shownAs().value())));
    }
    if (!earlier.socket().value().id().equals(later.socket().value().id())) {
      return Optional.of(
          slotReadTwoWays(
              later,
              later.socket(),
              earlier.socket(),
              "it was for socket %s and for socket %s"
                  .formatted(
                      Wording.quoted(earlier.socket().value()),
                      Wording.quoted(later.socket().value()))));
    }
    boolean twice = earlier.pedal().value() == later.pedal().value();
    return twice && !contents(earlier).equals(contents(later))
        ? Optional.of(
            slotReadTwoWays(
                later,
                later.pedal(),
                earlier.pedal(),
                "the %s pedal had two settings".formatted(later.pedal().value().word())))
        : Optional.empty();
  }

  private static List<Object> contents(ProgramReading row) {
    return List.of(
        row.mode().map(mode -> mode.value().id()),
        row.level().map(Fact::value),
        row.limit().map(Fact::value));
  }

  private static Finding slotReadTwoWays(
      ProgramReading row, Fact<?> later, Fact<?> earlier, String difference) {
    return Finding.at(
            later.at(),
            "slot %s of %s has two different readings on %s: %s"
                .formatted(
                    row.slot().value(),
                    Wording.quoted(row.asset().value()),
                    row.date().value(),
                    difference))
        .note(earlier.at(), "the other reading from that day")
        .help("read the slot again, and keep the lines that match the machine");
  }

  private static List<Finding> slotReadInPart(CheckedUnit checked) {
    return ReadingDay.of(checked.unit()).stream().flatMap(RecordRules::inPart).toList();
  }

  private static Stream<Finding> inPart(ReadingDay day) {
    return day.slots().stream().noneMatch(rows -> pedals(rows) > 1)
        ? Stream.empty()
        : day.slots().stream()
            .filter(rows -> pedals(rows) == 1)
            .map(rows -> slotReadInPart(rows.get(0)));
  }

  private static long pedals(List<ProgramReading> rows) {
    return rows.stream().map(row -> row.pedal().value()).distinct().count();
  }

  private static Finding slotReadInPart(ProgramReading row) {
    return Finding.at(
            row.slot().at(),
            "only the %s pedal of slot %s of %s was read on %s, but both pedals of other slots"
                .formatted(
                    row.pedal().value().word(),
                    row.slot().value(),
                    Wording.quoted(row.asset().value()),
                    row.date().value()))
        .help("check for a mistyped slot, or read the other pedal too, even if it is unassigned");
  }

  private static List<Finding> outputCheckCannotBe(CheckedUnit checked) {
    return checked.unit().outputChecks().stream()
        .filter(check -> !isDoubtful(checked.unit(), check.mode().value()))
        .flatMap(check -> outputCheckCannotBe(check).stream())
        .toList();
  }

  /** If a profile cannot be set either, look at the description of the mode. */
  private static boolean isDoubtful(Unit unit, Mode mode) {
    return unit.profiles().stream()
        .flatMap(profile -> profile.pedalSettings().stream())
        .filter(setting -> setting.mode().value().id().equals(mode.id()))
        .anyMatch(setting -> !setting.canBeSet());
  }

  private static Optional<Finding> outputCheckCannotBe(OutputCheck check) {
    PedalSetting setting = new PedalSetting(check.at(), check.mode(), check.level(), check.limit());
    if (setting.canBeSet()) {
      return Optional.empty();
    }
    String level =
        check
            .level()
            .map(it -> " at " + Wording.level(check.mode().value(), it.value()))
            .orElse("");
    String limit = check.limit().map(it -> " and " + it.value()).orElse("");
    return Optional.of(
        Finding.at(
                check
                    .limit()
                    .map(Fact::at)
                    .or(() -> check.level().map(Fact::at))
                    .orElse(check.at()),
                "the output was measured in %s%s%s, which cannot be set like that"
                    .formatted(Wording.quoted(check.mode().value()), level, limit))
            .note(check.mode().value().at(), "the machine's description of the mode")
            .help("look up the setting in the record of the measurement, and correct the line"));
  }

  private static List<Finding> updateWithoutVersion(CheckedUnit checked) {
    return checked.unit().serviceEvents().stream()
        .filter(event -> event.event().value() == ServiceEventKind.SOFTWARE_UPDATE)
        .filter(event -> event.softwareAfter().isEmpty())
        .map(
            event ->
                Finding.at(
                        event.event().at(),
                        "the software of %s was updated on %s, but the new version is not given"
                            .formatted(Wording.quoted(event.asset().value()), event.date().value()))
                    .help("write the version under 'software-after'"))
        .toList();
  }

  private static List<Finding> testLoadOutsideRange(CheckedUnit checked) {
    return checked.unit().outputChecks().stream()
        .filter(check -> !machine(check).loadRange().value().holds(check.load().value()))
        .collect(
            Collectors.groupingBy(
                check -> List.of(machine(check).id(), check.load().value()),
                LinkedHashMap::new,
                Collectors.toList()))
        .values()
        .stream()
        .map(RecordRules::testLoadOutsideRange)
        .toList();
  }

  private static Machine machine(OutputCheck check) {
    return check.asset().value().machine().value();
  }

  /**
   * Measurements at one load of one model are one mistake, whether the range or the load is wrong.
   */
  private static Finding testLoadOutsideRange(List<OutputCheck> same) {
    OutputCheck first = same.get(0);
    Fact<LoadRange> range = machine(first).loadRange();
    String more = same.size() == 1 ? "" : " (" + same.size() + " measurements)";
    return Finding.at(
            first.load().at(),
            "at %s no output of %s is published, so there is nothing to compare the measurement with%s"
                .formatted(first.load().value(), Wording.quoted(machine(first)), more))
        .note(range.at(), "the machine's description says " + range.value().text())
        .help("correct the load or the range if it is mistyped, or measure at a load in the range");
  }
}
