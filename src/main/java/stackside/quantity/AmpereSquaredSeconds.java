package stackside.quantity;

import java.util.List;

/** A heating factor: current squared times time, in ampere-squared seconds. */
public record AmpereSquaredSeconds(double value)
    implements Quantity, Comparable<AmpereSquaredSeconds> {

  /** Reads a heating factor from text such as {@code 30 A2s}. */
  public static final Measure<AmpereSquaredSeconds> MEASURE =
      new Measure<>(
          "a heating factor", List.of(new Measure.UnitName("A2s", 1)), AmpereSquaredSeconds::new);

  public AmpereSquaredSeconds {
    Quantity.requireFinite(value);
  }

  @Override
  public String unit() {
    return "A2s";
  }

  @Override
  public int compareTo(AmpereSquaredSeconds other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return text();
  }
}
