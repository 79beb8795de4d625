package stackside.quantity;

import java.util.List;

/** A resistance in ohms, assumed to have no reactance. */
public record Ohms(double value) implements Quantity, Comparable<Ohms> {

  /** Reads a resistance from text such as {@code 500 ohm}. */
  public static final Measure<Ohms> MEASURE =
      new Measure<>(
          "a resistance",
          List.of(new Measure.UnitName("ohm", 1), new Measure.UnitName("kohm", 1000)),
          Ohms::new);

  public Ohms {
    Quantity.requireFinite(value);
  }

  @Override
  public String unit() {
    return "ohm";
  }

  @Override
  public int compareTo(Ohms other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return text();
  }
}
