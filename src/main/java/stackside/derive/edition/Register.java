package stackside.derive.edition;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stackside.derive.signed.CanonicalJson;
import stackside.derive.signed.Deed;
import stackside.derive.signed.Fingerprint;
import stackside.derive.signed.Json;

/**
 * Every issue, withdrawal and lifting that there was, oldest first, each under a seal over itself
 * and the seal before it. It stands in the issued site folder, and the next issue compares with it.
 * It is never begun anew by itself.
 */
public record Register(List<Line> lines) {
  /** Where it stands in the site folder. */
  public static final String FILE = "register.json";

  public Register {
    lines = List.copyOf(lines);
  }

  /** An entry under its seal. */
  public record Line(RegisterEntry entry, Fingerprint seal) {}

  /** The register of a unit that has never issued anything. */
  public static Register none() {
    return new Register(List.of());
  }

  public List<RegisterEntry> entries() {
    return lines.stream().map(Line::entry).toList();
  }

  /** The cards as the last entry leaves them, by name. */
  public SortedMap<String, CardEntry> cards() {
    SortedMap<String, CardEntry> cards = new TreeMap<>();
    lines.forEach(line -> line.entry().cards().forEach(card -> cards.put(card.name(), card)));
    return Collections.unmodifiableSortedMap(cards);
  }

  public Optional<CardEntry> card(String name) {
    return Optional.ofNullable(cards().get(name));
  }

  /** What must not be used and was not lifted, by what it is. */
  public SortedMap<String, Stop> stops() {
    TreeMap<String, Stop> stops = new TreeMap<>();
    for (Line line : lines) {
      line.entry().lifted().forEach(stops::remove);
      line.entry().stops().forEach(stop -> stops.put(stop.what(), stop));
    }
    return Collections.unmodifiableSortedMap(stops);
  }

  public Optional<RegisterEntry> last() {
    return lines.isEmpty() ? Optional.empty() : Optional.of(lines.get(lines.size() - 1).entry());
  }

  /** The number of the last deed of this kind; 0 where there was none. */
  public int last(Deed deed) {
    return lines.stream()
        .map(Line::entry)
        .filter(entry -> entry.deed() == deed)
        .mapToInt(RegisterEntry::number)
        .max()
        .orElse(0);
  }

  /** The seal of the last entry, which stands for the whole register. */
  public Optional<Fingerprint> head() {
    return lines.isEmpty() ? Optional.empty() : Optional.of(lines.get(lines.size() - 1).seal());
  }

  /** The last seal that the ledger had when something was done. */
  public Optional<Fingerprint> ledgerHead() {
    return lines.stream()
        .flatMap(line -> line.entry().ledger().stream())
        .reduce((earlier, later) -> later);
  }

  /** What was in force last. */
  public Optional<Fingerprint> manifest() {
    return last().flatMap(RegisterEntry::manifest);
  }

  /** The register with one more entry. */
  public Register with(RegisterEntry entry) {
    List<Line> longer = new ArrayList<>(lines);
    longer.add(new Line(entry, Fingerprint.of(RegisterJson.sealed(head(), entry))));
    return new Register(longer);
  }

  /** The last entry as its seal covers it, to be kept beside the ledger that names it. */
  public Json.Members lastSealed() {
    return RegisterJson.sealed(before().head(), last().orElseThrow());
  }

  /** An entry read from what its seal covers, with the seal before it; absent if it is none. */
  static Optional<Sealed> sealed(Json.Members json) {
    try {
      return Optional.of(RegisterJson.sealed(json));
    } catch (DamagedRegister e) {
      return Optional.empty();
    }
  }

  /** An entry, and the seal of the one before it. */
  record Sealed(Optional<Fingerprint> before, RegisterEntry entry) {}

  /** The register without its last entry, as it stood before that. */
  public Register before() {
    return upTo(lines.size() - 1);
  }

  /** The register as it stood after so many entries. */
  public Register upTo(int count) {
    return new Register(lines.subList(0, count));
  }

  /** The register as its file holds it. */
  public String text() {
    return CanonicalJson.of(RegisterJson.of(this)) + "\n";
  }

  /**
   * Reads a register.
   *
   * @throws DamagedRegister if it is damaged or of a format that is not known
   */
  public static Register read(String text) throws DamagedRegister {
    return RegisterJson.read(text);
  }
}
