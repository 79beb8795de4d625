package stackside.cli;

import java.util.List;
import java.util.stream.Stream;
import stackside.check.ContentRules;
import stackside.content.ReadingFaults;
import stackside.derive.edition.BookFaults;
import stackside.derive.edition.RecordFaults;
import stackside.derive.signed.LedgerFaults;
import stackside.derive.standing.DatedAhead;
import stackside.inspect.CardRules;
import stackside.source.Fault;

/** Every kind of mistake that any stage can find. */
final class Faults {
  private Faults() {}

  /**
   * Rules in the order of the catalogue, then those about cards, then faults of reading, of the
   * ledger, of records.
   */
  static List<Fault> all() {
    return Stream.of(
            ContentRules.catalogue().faults().stream(),
            CardRules.faults().stream(),
            ReadingFaults.all().stream(),
            LedgerFaults.all().stream(),
            BookFaults.all().stream(),
            RecordFaults.all().stream(),
            Stream.of(DatedAhead.FAULT))
        .flatMap(each -> each)
        .toList();
  }
}
