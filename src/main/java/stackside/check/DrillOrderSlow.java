package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.derive.drill.DrillOrder;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Tells of drills whose checks would find the cause sooner in another order. */
final class DrillOrderSlow implements Rule {
  private static final Fault FAULT =
      new Fault(
          "drill-order-slow",
          Severity.NOTE,
          "the unit's own counts say that another order of checks is quicker");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.drillOrders().stream()
        .filter(DrillOrder::couldBeSooner)
        .map(DrillOrderSlow::problem)
        .toList();
  }

  private static Problem problem(DrillOrder order) {
    return FAULT
        .at(
            order.drill().name().at(),
            "from %s counted causes, the checks of %s find it after %s s on average; in the order %s, after %s s"
                .formatted(
                    order.counted(),
                    Wording.quoted(order.drill()),
                    Math.round(order.written()),
                    Wording.list(order.order().stream().map(String::valueOf).toList()),
                    Math.round(order.best())))
        .help("move the checks, or say with 'after' which must come first");
  }
}
