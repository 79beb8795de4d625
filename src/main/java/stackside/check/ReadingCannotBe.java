package stackside.check;

import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.model.Fact;
import stackside.model.Mode;
import stackside.model.PedalSetting;
import stackside.model.ProgramReading;
import stackside.model.Socket;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds program readings that show what the machine cannot be set to. */
final class ReadingCannotBe implements Rule {
  private static final Fault FAULT =
      new Fault(
          "reading-cannot-be",
          Severity.ERROR,
          "a program reading shows what the machine cannot be set to");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().programReadings().stream()
        .flatMap(reading -> problem(analysis.unit(), reading).stream())
        .toList();
  }

  private static Optional<Problem> problem(Unit unit, ProgramReading reading) {
    Optional<Problem> setting = asApproved(unit, reading) ? Optional.empty() : problem(reading);
    return setting.or(() -> reading.mode().flatMap(mode -> wrongSocket(unit, reading, mode)));
  }

  /** A mode leaves a machine by the sockets of its kind; a profile that differs is the mistake. */
  private static Optional<Problem> wrongSocket(Unit unit, ProgramReading reading, Fact<Mode> mode) {
    Socket socket = reading.socket().value();
    boolean fits = socket.kind().value().energy().equals(Optional.of(mode.value().kind().value()));
    if (fits || isApproved(unit, reading, mode.value())) {
      return Optional.empty();
    }
    return Optional.of(
        FAULT
            .at(
                mode.at(),
                "slot %s was read with %s for socket %s, and a %s mode does not come out there"
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

  /** What a profile says too is that profile's mistake, or the description's. */
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

  private static Optional<Problem> problem(ProgramReading reading) {
    return reading
        .mode()
        .map(mode -> new PedalSetting(reading.at(), mode, reading.level(), reading.limit()))
        .filter(setting -> !setting.canBeSet())
        .map(
            setting ->
                FAULT
                    .at(
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
}
