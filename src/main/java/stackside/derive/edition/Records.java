package stackside.derive.edition;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stackside.model.Kind;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.source.Location;
import stackside.source.Problem;
import stackside.source.SheetRow;

/**
 * The records of a unit beside those that its issues knew. Records are added and never changed; a
 * wrong one is withdrawn where it stands.
 */
public final class Records {
  /** Two cells are slips of a hand; where more differ it is another record. */
  private static final int MOST_SLIPS = 2;

  private final Unit unit;
  private final Map<SheetRow, KeptRecord> fresh = new LinkedHashMap<>();
  private final List<KeptRecord> missing = new ArrayList<>();

  private Records(Register register, Unit unit, List<SheetRow> rows) {
    this.unit = unit;
    Map<KeptRecord, List<KeptRecord>> now = new LinkedHashMap<>();
    for (SheetRow row : rows) {
      KeptRecord written = KeptRecord.of(row);
      now.computeIfAbsent(written.counting(), any -> new ArrayList<>()).add(written);
      fresh.put(row, written);
    }
    Set<KeptRecord> standing = new HashSet<>();
    for (Map.Entry<KeptRecord, KeptRecord> each : known(register).entrySet()) {
      Optional<KeptRecord> same =
          now.getOrDefault(each.getKey(), List.of()).stream()
              .filter(each.getValue()::stands)
              .findFirst();
      same.ifPresentOrElse(standing::add, () -> missing.add(each.getValue()));
    }
    fresh.values().removeIf(standing::contains);
  }

  /** Each record as the register last knew it, by what it says while it counts. */
  private static Map<KeptRecord, KeptRecord> known(Register register) {
    Map<KeptRecord, KeptRecord> known = new LinkedHashMap<>();
    register.entries().stream()
        .flatMap(entry -> entry.records().stream())
        .forEach(each -> known.put(each.counting(), each));
    return known;
  }

  /** The rows that an issue has to remember: new ones, and those withdrawn since. */
  static List<KeptRecord> toKeep(Register register, Collection<SheetRow> rows) {
    Map<KeptRecord, KeptRecord> known = known(register);
    return rows.stream()
        .map(KeptRecord::of)
        .filter(row -> !row.equals(known.get(row.counting())))
        .distinct()
        .toList();
  }

  /**
   * What was changed or taken away since the register was written. A generator that left the unit
   * took its records along.
   *
   * @param rows all rows of the sheets of records, read or not
   */
  public static List<Problem> problems(Register register, Unit unit, List<SheetRow> rows) {
    return new Records(register, unit, rows).problems();
  }

  private List<Problem> problems() {
    List<Problem> problems = new ArrayList<>();
    Map<List<String>, List<KeptRecord>> gone = new LinkedHashMap<>();
    for (KeptRecord each : missing) {
      Optional<SheetRow> row = changedTo(each);
      if (row.isPresent()) {
        fresh.remove(row.get());
        problems.add(changed(each, row.get()));
      } else {
        gone.computeIfAbsent(List.of(each.file(), each.asset()), any -> new ArrayList<>())
            .add(each);
      }
    }
    gone.values()
        .forEach(each -> asset(each.get(0)).ifPresent(of -> problems.add(removed(each, of))));
    return problems;
  }

  /** The new row that is most like a record that is missing. */
  private Optional<SheetRow> changedTo(KeptRecord record) {
    return fresh.entrySet().stream()
        .filter(entry -> entry.getValue().file().equals(record.file()))
        .filter(entry -> record.differing(entry.getValue()).size() <= MOST_SLIPS)
        .min(Comparator.comparing(entry -> record.differing(entry.getValue()).size()))
        .map(Map.Entry::getKey);
  }

  private static Problem changed(KeptRecord then, SheetRow row) {
    KeptRecord now = KeptRecord.of(row);
    Map<String, String> differing = then.differing(now);
    Location at =
        differing.keySet().stream()
            .flatMap(column -> row.cell(column).stream())
            .map(SheetRow.Cell::at)
            .findFirst()
            .orElse(row.at());
    return RecordFaults.CHANGED
        .at(
            at,
            "this record is not as it was at an earlier issue: it said "
                + String.join(", ", differing.values()))
        .help(
            "write back what stood there; if that was wrong, say so in the column 'withdrawn', as"
                + " day, initials and why, and add a row with what is right");
  }

  private Optional<Thing> asset(KeptRecord record) {
    return ThingId.parse(Kind.ASSET.word() + ":" + record.asset()).flatMap(unit::find);
  }

  private static Problem removed(List<KeptRecord> gone, Thing asset) {
    int more = gone.size() - 1;
    return RecordFaults.REMOVED
        .at(
            Location.startOf(gone.get(0).file()),
            "a record that stood here at an earlier issue is gone: "
                + gone.get(0).words()
                + (more == 0 ? "" : "; and " + more + " more of this generator"))
        .note(asset.at(), "the generator that it was about")
        .help(
            "write the row back; if it was wrong, say so in the column 'withdrawn', as day,"
                + " initials and why");
  }
}
