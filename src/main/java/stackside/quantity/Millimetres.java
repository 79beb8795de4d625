package stackside.quantity;

import java.util.List;

/** A length in millimetres. */
public record Millimetres(double value) implements Quantity, Comparable<Millimetres> {

  /** Reads a length from text such as {@code 10 mm}. */
  public static final Measure<Millimetres> MEASURE =
      new Measure<>(
          "a length",
          List.of(
              new Measure.UnitName("mm", 1),
              new Measure.UnitName("cm", 10),
              new Measure.UnitName("m", 1000)),
          Millimetres::new);

  public Millimetres {
    Quantity.requireFinite(value);
  }

  @Override
  public String unit() {
    return "mm";
  }

  @Override
  public int compareTo(Millimetres other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return text();
  }
}
