package stackside.derive.edition;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stackside.derive.signed.Fingerprint;

/**
 * What one issue or one withdrawal did.
 *
 * @param number from 1, without a gap
 * @param by the role that withdrew; absent for an issue
 * @param ledger the last seal of the ledger at that time
 * @param cards the cards that it changed
 * @param records the records of measurement and service that were new to it; none in entries that
 *     are older than their being kept
 * @param seal over this entry and the seal before it
 */
public record RegisterEntry(
    int number,
    LocalDate on,
    Optional<String> by,
    Optional<Fingerprint> ledger,
    List<CardEntry> cards,
    List<KeptRecord> records,
    Fingerprint seal) {
  public RegisterEntry {
    cards = List.copyOf(cards);
    records = List.copyOf(records);
  }

  /** Whether both are issues, and this one found nothing new. */
  boolean saysNothingAfter(RegisterEntry last) {
    return by.isEmpty()
        && last.by().isEmpty()
        && cards.isEmpty()
        && records.isEmpty()
        && ledger.equals(last.ledger());
  }
}
