package stackside.cli;

import java.util.List;
import java.util.stream.Stream;
import stackside.check.Catalogue;
import stackside.check.Rule;
import stackside.content.ReadingFaults;
import stackside.source.Fault;

/** Every kind of mistake that any stage can find. */
final class Faults {
  private Faults() {}

  /** Rules in the order of the catalogue, then faults of reading and of the ledger. */
  static List<Fault> all() {
    return Stream.concat(Catalogue.rules().stream().map(Rule::fault), ReadingFaults.all().stream())
        .toList();
  }
}
