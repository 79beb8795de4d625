package stackside.derive.circuit;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stackside.derive.output.ModeSetting;
import stackside.derive.program.Readings;
import stackside.derive.program.SlotReading;
import stackside.model.Asset;
import stackside.model.Fact;
import stackside.model.PedalColour;
import stackside.model.Profile;
import stackside.model.ProgramReading;
import stackside.model.Settings;
import stackside.model.StoredProgram;
import stackside.model.Unit;

/**
 * What is known about the stored programs of one asset. In order of preference: the last reading if
 * it still counts, what the approved profiles of its model say, or nothing.
 */
record KnownPrograms(Asset asset, List<SlotReading> readings, List<Settings> approved) {

  KnownPrograms {
    readings = List.copyOf(readings);
    approved = List.copyOf(approved);
  }

  static KnownPrograms of(Unit unit, Readings readings, Asset asset) {
    return new KnownPrograms(
        asset,
        readings.of(asset).stream().filter(SlotReading::counts).toList(),
        unit.profilesOn(asset.machine().value()).stream()
            .map(Profile::settings)
            .flatMap(Optional::stream)
            .toList());
  }

  /** The content of a slot. */
  Program inSlot(int slot) {
    return readings.stream()
        .filter(reading -> reading.slot() == slot)
        .findFirst()
        .map(KnownPrograms::read)
        .or(() -> approvedIn(slot))
        .orElseGet(() -> Program.unknown(Optional.of(slot)));
  }

  /**
   * Every program that might be active instead of the one in this slot: the known ones, and one
   * that represents all slots about which nothing is known.
   */
  List<Program> otherThan(int slot) {
    TreeSet<Integer> known = new TreeSet<>();
    readings.forEach(reading -> known.add(reading.slot()));
    approvedPrograms().forEach(program -> known.add(program.slot().value()));
    Stream<Program> others =
        known.stream().filter(other -> other.intValue() != slot).map(this::inSlot);
    known.add(slot);
    return Stream.concat(others, unreadBeside(known)).toList();
  }

  private Stream<Program> unreadBeside(TreeSet<Integer> known) {
    return asset.machine().value().programs().map(Fact::value).stream()
        .filter(range -> !IntStream.rangeClosed(range.from(), range.to()).allMatch(known::contains))
        .map(range -> Program.unknown(Optional.empty()));
  }

  private Stream<StoredProgram> approvedPrograms() {
    return approved.stream().map(Settings::program).flatMap(Optional::stream);
  }

  private Optional<Program> approvedIn(int slot) {
    return approved.stream()
        .filter(settings -> settings.program().stream().anyMatch(p -> p.slot().value() == slot))
        .findFirst()
        .map(settings -> approved(settings, Program.Source.OTHER_PROFILE));
  }

  static Program approved(Settings settings, Program.Source source) {
    return new Program(
        settings.program().map(program -> program.slot().value()),
        settings.program().map(program -> program.shownAs().value()),
        Optional.of(settings.socket().value()),
        PedalMeaning.of(settings.yellow()),
        PedalMeaning.of(settings.blue()),
        source);
  }

  private static Program read(SlotReading reading) {
    return new Program(
        Optional.of(reading.slot()),
        Optional.of(reading.lastRow().shownAs().value()),
        Optional.of(reading.lastRow().socket().value()),
        meaning(reading.pedal(PedalColour.YELLOW)),
        meaning(reading.pedal(PedalColour.BLUE)),
        Program.Source.READ);
  }

  private static PedalMeaning meaning(Optional<ProgramReading> row) {
    return row.<PedalMeaning>map(
            each ->
                each.mode()
                    .<PedalMeaning>map(
                        mode ->
                            new PedalMeaning.Sets(
                                new ModeSetting(
                                    mode.value(),
                                    each.level().map(Fact::value),
                                    each.limit().map(Fact::value))))
                    .orElse(new PedalMeaning.Nothing()))
        .orElse(new PedalMeaning.Unknown());
  }
}
