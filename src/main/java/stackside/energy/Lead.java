package stackside.energy;

import java.util.Optional;
import stackside.quantity.Ohms;

/**
 * Compares two curves, starting from the lowest load that both publish: up to which load does the
 * first deliver more power than the second?
 */
public final class Lead {
  private static final int STEPS = 2000;
  private static final int HALVINGS = 60;

  private final OutputCurve one;
  private final OutputCurve other;
  private final double from;
  private final double to;

  private Lead(OutputCurve one, OutputCurve other) {
    this.one = one;
    this.other = other;
    this.from = Math.max(one.loads().from().value(), other.loads().from().value());
    this.to = Math.min(one.loads().to().value(), other.loads().to().value());
  }

  /**
   * The load up to which the first curve delivers more than the second. This is the highest load
   * that both publish if the first leads throughout, and absent if it does not lead at the lowest.
   */
  public static Optional<Ohms> of(OutputCurve one, OutputCurve other) {
    Lead lead = new Lead(one, other);
    boolean leads = lead.from <= lead.to && lead.leadsAt(lead.from);
    return leads ? Optional.of(new Ohms(lead.end())) : Optional.empty();
  }

  private double end() {
    double last = from;
    for (int i = 1; i <= STEPS; i++) {
      double next = i == STEPS ? to : from * StrictMath.pow(to / from, i / (double) STEPS);
      if (!leadsAt(next)) {
        return between(last, next);
      }
      last = next;
    }
    return to;
  }

  private double between(double leading, double behind) {
    double low = leading;
    double high = behind;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (leadsAt(middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private boolean leadsAt(double load) {
    Ohms at = new Ohms(load);
    return one.power(at).orElseThrow().compareTo(other.power(at).orElseThrow()) > 0;
  }
}
