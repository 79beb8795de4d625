package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Finds codes that do not decode to the printed address, or are too small or too crowded to scan.
 */
final class CodeUnreadable implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "code-unreadable",
          Severity.ERROR,
          "a card's QR code cannot be scanned or leads elsewhere");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final double WIDTH = 30;
  private static final double MODULE = 0.8;
  private static final double CLEAR = 4;

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Problem> problems = new ArrayList<>();
    String address = card.plan().address();
    if (card.seen().code().isEmpty()) {
      problems.add(FAULT.at(card.at(), card.name() + " has no code that can be read"));
      return problems;
    }
    ReadCode code = card.seen().code().get();
    if (!code.text().equals(card.plan().held())) {
      problems.add(
          FAULT.at(
              card.at(),
              "the code leads to "
                  + code.text()
                  + ", and the card's own address is "
                  + card.plan().held()));
    }
    if (!card.seen().text().contains(address)) {
      problems.add(FAULT.at(card.at(), card.name() + " does not print the address " + address));
    }
    if (code.box().width() < WIDTH - 0.05 || code.module() < MODULE - 0.005) {
      problems.add(
          FAULT.at(
              card.at(),
              "the code is "
                  + Height.words(code.box().width())
                  + " wide with modules of "
                  + Height.words(code.module())));
    }
    if (code.clear() < CLEAR - 0.01) {
      problems.add(
          FAULT.at(
              card.at(),
              "only " + Height.number(code.clear()) + " modules are clear round the code"));
    }
    if (code.level().equals("L")) {
      problems.add(FAULT.at(card.at(), "the code forgives only few spoilt modules"));
    }
    return problems;
  }
}
