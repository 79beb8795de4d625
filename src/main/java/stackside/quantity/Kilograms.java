package stackside.quantity;

import java.util.List;

/** A body weight in kilograms. */
public record Kilograms(double value) implements Quantity, Comparable<Kilograms> {

  /** Reads a weight from text such as {@code 30 kg}. */
  public static final Measure<Kilograms> MEASURE =
      new Measure<>("a weight", List.of(new Measure.UnitName("kg", 1)), Kilograms::new);

  public Kilograms {
    Quantity.requireFinite(value);
  }

  @Override
  public String unit() {
    return "kg";
  }

  @Override
  public int compareTo(Kilograms other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return text();
  }
}
