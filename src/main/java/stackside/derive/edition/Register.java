package stackside.derive.edition;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stackside.derive.signed.CanonicalJson;
import stackside.derive.signed.Fingerprint;

/**
 * Every issue and withdrawal that there was, oldest first. It stands in the issued site folder, and
 * the next issue compares with it. It is never begun anew by itself.
 */
public record Register(List<RegisterEntry> entries) {

  /** Where it stands in the site folder. */
  public static final String FILE = "register.json";

  public Register {
    entries = List.copyOf(entries);
  }

  /** The register of a unit that has never issued anything. */
  public static Register none() {
    return new Register(List.of());
  }

  /** The cards as the last entry leaves them, by name. */
  public SortedMap<String, CardEntry> cards() {
    SortedMap<String, CardEntry> cards = new TreeMap<>();
    entries.forEach(entry -> entry.cards().forEach(card -> cards.put(card.name(), card)));
    return Collections.unmodifiableSortedMap(cards);
  }

  public Optional<CardEntry> card(String name) {
    return Optional.ofNullable(cards().get(name));
  }

  public Optional<RegisterEntry> last() {
    return entries.isEmpty() ? Optional.empty() : Optional.of(entries.get(entries.size() - 1));
  }

  /** The last seal that the ledger had when something was issued. */
  public Optional<Fingerprint> ledgerHead() {
    return entries.stream()
        .flatMap(entry -> entry.ledger().stream())
        .reduce((earlier, later) -> later);
  }

  /** The register with one more entry. */
  public Register with(
      LocalDate on,
      Optional<String> by,
      Optional<Fingerprint> ledger,
      Collection<CardEntry> changed,
      List<KeptRecord> records) {
    int number = entries.size() + 1;
    List<CardEntry> cards = List.copyOf(changed);
    Fingerprint seal = RegisterJson.seal(seal(), number, on, by, ledger, cards, records);
    List<RegisterEntry> longer = new ArrayList<>(entries);
    longer.add(new RegisterEntry(number, on, by, ledger, cards, records, seal));
    return new Register(longer);
  }

  private Optional<Fingerprint> seal() {
    return last().map(RegisterEntry::seal);
  }

  /** Whether the last entry says nothing that the issue before it did not say. */
  public boolean repeatsItself() {
    return entries.size() > 1
        && entries.get(entries.size() - 1).saysNothingAfter(entries.get(entries.size() - 2));
  }

  /** The register without its last entry, as it stood before that. */
  public Register before() {
    return upTo(entries.size() - 1);
  }

  /** The register as it stood after the entry of this number. */
  public Register upTo(int number) {
    return new Register(entries.subList(0, number));
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
