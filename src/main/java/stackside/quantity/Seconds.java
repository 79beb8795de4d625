package stackside.quantity;

import java.util.List;

/** A time in seconds. */
public record Seconds(double value) implements Quantity, Comparable<Seconds> {

  /** Reads a time from text such as {@code 10 s}. */
  public static final Measure<Seconds> MEASURE =
      new Measure<>(
          "a time",
          List.of(
              new Measure.UnitName("s", 1),
              new Measure.UnitName("ms", 0.001),
              new Measure.UnitName("min", 60)),
          Seconds::new);

  public Seconds {
    Quantity.requireFinite(value);
  }

  @Override
  public String unit() {
    return "s";
  }

  @Override
  public int compareTo(Seconds other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return text();
  }
}
