package stackside.derive.edition;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stackside.derive.signed.Deed;
import stackside.derive.signed.Fingerprint;

/**
 * What one issue, one withdrawal or one lifting did.
 *
 * @param number counted for each deed from 1; one is left out where an issue was begun and lost
 * @param by the role that withdrew or lifted; absent for an issue
 * @param ledger the last seal of the ledger before it
 * @param manifest what has been in force since; absent where nothing was known to be
 * @param files the fingerprint of the list of all files that it left in the site folder
 * @param cards the cards that it changed
 * @param stops what must not be used from then on
 * @param lifted what may be issued again
 * @param records the records of measurement and service that were new to it
 * @param why in words, where somebody gave a reason or a number was left out
 */
public record RegisterEntry(
    Deed deed,
    int number,
    LocalDate on,
    Optional<String> by,
    Optional<Fingerprint> ledger,
    Optional<Fingerprint> manifest,
    Optional<Fingerprint> files,
    List<CardEntry> cards,
    List<Stop> stops,
    List<String> lifted,
    List<KeptRecord> records,
    String why) {
  public RegisterEntry {
    cards = List.copyOf(cards);
    stops = List.copyOf(stops);
    lifted = List.copyOf(lifted);
    records = List.copyOf(records);
  }

  /** The entry, knowing the files that it left. */
  public RegisterEntry leaving(Fingerprint list) {
    return new RegisterEntry(
        deed,
        number,
        on,
        by,
        ledger,
        manifest,
        Optional.of(list),
        cards,
        stops,
        lifted,
        records,
        why);
  }

  /** Whether it did nothing that a reader of the site could want to know. */
  boolean saysNothing() {
    return deed == Deed.ISSUE && cards.isEmpty() && stops.isEmpty() && records.isEmpty();
  }
}
