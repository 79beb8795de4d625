package stackside.derive.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.model.Fact;
import stackside.model.PedalColour;
import stackside.model.PedalSetting;
import stackside.model.PedalUse;
import stackside.model.ProgramReading;
import stackside.model.Settings;
import stackside.model.StoredProgram;
import stackside.source.Location;

/** Compares one reading with one approved profile, field by field. */
final class Comparison {
  private final Settings settings;
  private final StoredProgram program;
  private final SlotReading reading;
  private final List<Mismatch> found = new ArrayList<>();

  private Comparison(Settings settings, StoredProgram program, SlotReading reading) {
    this.settings = settings;
    this.program = program;
    this.reading = reading;
  }

  static List<Mismatch> of(Settings settings, StoredProgram program, SlotReading reading) {
    return new Comparison(settings, program, reading).all();
  }

  private List<Mismatch> all() {
    for (ProgramReading row : reading.rows()) {
      whole(row);
    }
    for (PedalColour colour : PedalColour.values()) {
      pedal(colour);
    }
    return List.copyOf(found);
  }

  /**
   * Every row repeats the fields of the whole program, so each difference is reported once only.
   */
  private void whole(ProgramReading row) {
    compare(
        Mismatch.Field.SHOWN_AS,
        program.shownAs().value(),
        row.shownAs().value(),
        program.shownAs().at(),
        row.shownAs().at());
    compare(
        Mismatch.Field.SOCKET,
        settings.socket().value().id().local(),
        row.socket().value().id().local(),
        settings.socket().at(),
        row.socket().at());
  }

  private void compare(
      Mismatch.Field field, String approved, String read, Location approvedAt, Location readAt) {
    boolean said =
        found.stream()
            .anyMatch(
                earlier -> earlier.field() == field && earlier.read().equals(Optional.of(read)));
    if (!approved.equals(read) && !said) {
      found.add(
          new Mismatch(
              field,
              Optional.empty(),
              Optional.of(approved),
              Optional.of(read),
              approvedAt,
              readAt));
    }
  }

  private void pedal(PedalColour colour) {
    PedalUse use = settings.pedal(colour);
    Optional<ProgramReading> row = reading.pedal(colour);
    if (row.isPresent()) {
      pedal(colour, use, row.get());
    } else if (use.setting().isPresent()) {
      found.add(
          new Mismatch(
              Mismatch.Field.PEDAL_NOT_READ,
              Optional.of(colour),
              use.setting().map(set -> set.mode().value().id().local()),
              Optional.empty(),
              use.at(),
              reading.lastRow().at()));
    }
  }

  private void pedal(PedalColour colour, PedalUse use, ProgramReading row) {
    Optional<PedalSetting> set = use.setting();
    boolean sameMode =
        differ(
            Mismatch.Field.MODE,
            colour,
            set.map(PedalSetting::mode).map(mode -> text(mode, mode.value().id().local())),
            row.mode().map(mode -> text(mode, mode.value().id().local())),
            use.at(),
            row.at());
    if (sameMode) {
      differ(
          Mismatch.Field.LEVEL,
          colour,
          set.flatMap(PedalSetting::level).map(level -> text(level, level.value().text())),
          row.level().map(level -> text(level, level.value().text())),
          use.at(),
          row.at());
      differ(
          Mismatch.Field.LIMIT,
          colour,
          set.flatMap(PedalSetting::limit).map(limit -> text(limit, limit.value().text())),
          row.limit().map(limit -> text(limit, limit.value().text())),
          use.at(),
          row.at());
    }
  }

  private static Fact<String> text(Fact<?> fact, String text) {
    return new Fact<>(text, fact.at());
  }

  /** Records a difference; returns true if there is none. */
  private boolean differ(
      Mismatch.Field field,
      PedalColour colour,
      Optional<Fact<String>> approved,
      Optional<Fact<String>> read,
      Location approvedElse,
      Location readElse) {
    Optional<String> wanted = approved.map(Fact::value);
    Optional<String> seen = read.map(Fact::value);
    if (wanted.equals(seen)) {
      return true;
    }
    found.add(
        new Mismatch(
            field,
            Optional.of(colour),
            wanted,
            seen,
            approved.map(Fact::at).orElse(approvedElse),
            read.map(Fact::at).orElse(readElse)));
    return false;
  }
}
