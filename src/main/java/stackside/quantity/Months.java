package stackside.quantity;

import java.util.List;

/** An interval in calendar months. */
public record Months(double value) implements Quantity, Comparable<Months> {

  /** Reads an interval from text such as {@code 12 months}. */
  public static final Measure<Months> MEASURE =
      new Measure<>(
          "an interval",
          List.of(
              new Measure.UnitName("months", 1),
              new Measure.UnitName("month", 1),
              new Measure.UnitName("years", 12),
              new Measure.UnitName("year", 12)),
          Months::new);

  public Months {
    Quantity.requireFinite(value);
  }

  @Override
  public String unit() {
    return "months";
  }

  @Override
  public int compareTo(Months other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return text();
  }
}
