package stackside.derive.edition;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stackside.source.SheetRow;

/**
 * A record of measurement or service as an issue knew it.
 *
 * @param file the sheet that it stands in
 * @param cells what its row says, by column; empty cells are left out
 */
public record KeptRecord(String file, SortedMap<String, String> cells) {
  static final String WITHDRAWN = "withdrawn";
  private static final String ASSET = "asset";
  private static final String DATE = "date";

  public KeptRecord {
    cells = Collections.unmodifiableSortedMap(new TreeMap<>(cells));
  }

  static KeptRecord of(SheetRow row) {
    SortedMap<String, String> cells = new TreeMap<>();
    row.cells().forEach(cell -> cells.put(cell.column(), cell.text()));
    return new KeptRecord(row.at().file(), cells);
  }

  /** The record without a word on whether it still counts. */
  KeptRecord counting() {
    SortedMap<String, String> fewer = new TreeMap<>(cells);
    fewer.remove(WITHDRAWN);
    return new KeptRecord(file, fewer);
  }

  String asset() {
    return cells.getOrDefault(ASSET, "");
  }

  Optional<String> withdrawn() {
    return Optional.ofNullable(cells.get(WITHDRAWN));
  }

  /** Whether a row still says this; it may have been withdrawn since. */
  boolean stands(KeptRecord row) {
    return row.counting().equals(counting())
        && (withdrawn().isEmpty() || row.withdrawn().equals(withdrawn()));
  }

  /** The columns in which another record differs, in the order of the alphabet. */
  SortedMap<String, String> differing(KeptRecord other) {
    SortedMap<String, String> differing = new TreeMap<>();
    Map<String, String> all = new LinkedHashMap<>(cells);
    all.putAll(other.cells);
    for (String column : all.keySet()) {
      String then = cells.getOrDefault(column, "");
      String now = other.cells.getOrDefault(column, "");
      if (!then.equals(now)) {
        differing.put(column, "%s %s then and %s now".formatted(column, quoted(then), quoted(now)));
      }
    }
    return differing;
  }

  private static String quoted(String text) {
    return text.isEmpty() ? "nothing" : "'" + text + "'";
  }

  /** The record in words: {@code EQ-0417 of 2026-03-02: level 2, limit 60 W}. */
  String words() {
    StringBuilder words = new StringBuilder(asset());
    Optional.ofNullable(cells.get(DATE)).ifPresent(day -> words.append(" of ").append(day));
    String mark = ": ";
    for (Map.Entry<String, String> cell : cells.entrySet()) {
      if (!cell.getKey().equals(ASSET) && !cell.getKey().equals(DATE)) {
        words
            .append(mark)
            .append(cell.getKey().replace('-', ' '))
            .append(' ')
            .append(cell.getValue());
        mark = ", ";
      }
    }
    return words.toString();
  }
}
