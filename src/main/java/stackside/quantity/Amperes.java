package stackside.quantity;

import java.util.List;

/** Electric current in amperes, root mean square unless stated otherwise. */
public record Amperes(double value) implements Quantity, Comparable<Amperes> {

  /** Reads a current from text such as {@code 0.5 A}. */
  public static final Measure<Amperes> MEASURE =
      new Measure<>(
          "a current",
          List.of(new Measure.UnitName("A", 1), new Measure.UnitName("mA", 0.001)),
          Amperes::new);

  public Amperes {
    Quantity.requireFinite(value);
  }

  @Override
  public String unit() {
    return "A";
  }

  @Override
  public int compareTo(Amperes other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return text();
  }
}
