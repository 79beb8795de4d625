package stackside.cli;

import java.util.List;
import java.util.stream.Stream;
import stackside.check.Catalogue;
import stackside.check.Rule;
import stackside.content.ReadingFaults;
import stackside.inspect.CardRules;
import stackside.source.Fault;

/** Every kind of mistake that any stage can find. */
final class Faults {
  private Faults() {}

  /** Rules in the order of the catalogue, then those about cards, then faults of reading. */
  static List<Fault> all() {
    return Stream.of(
            Catalogue.rules().stream().map(Rule::fault),
            CardRules.faults().stream(),
            ReadingFaults.all().stream())
        .flatMap(each -> each)
        .toList();
  }
}
