package stackside.quantity;

import java.util.List;

/** A gas flow in litres per minute. */
public record LitresPerMinute(double value) implements Quantity, Comparable<LitresPerMinute> {

  /** Reads a gas flow from text such as {@code 0.8 L/min}. */
  public static final Measure<LitresPerMinute> MEASURE =
      new Measure<>("a gas flow", List.of(new Measure.UnitName("L/min", 1)), LitresPerMinute::new);

  public LitresPerMinute {
    Quantity.requireFinite(value);
  }

  @Override
  public String unit() {
    return "L/min";
  }

  @Override
  public int compareTo(LitresPerMinute other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return text();
  }
}
