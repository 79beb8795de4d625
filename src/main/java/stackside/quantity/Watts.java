package stackside.quantity;

import java.util.List;

/** A high-frequency power in watts. */
public record Watts(double value) implements Quantity, Comparable<Watts> {

  /** Reads a power from text such as {@code 30 W}. */
  public static final Measure<Watts> MEASURE =
      new Measure<>("a power", List.of(new Measure.UnitName("W", 1)), Watts::new);

  public Watts {
    Quantity.requireFinite(value);
  }

  @Override
  public String unit() {
    return "W";
  }

  @Override
  public int compareTo(Watts other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return text();
  }
}
