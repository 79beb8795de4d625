package stackside.quantity;

import java.util.List;

/** A share in percent. */
public record Percent(double value) implements Quantity, Comparable<Percent> {

  /** Reads a share from text such as {@code 20 percent}. */
  public static final Measure<Percent> MEASURE =
      new Measure<>("a share", List.of(new Measure.UnitName("percent", 1)), Percent::new);

  public Percent {
    Quantity.requireFinite(value);
  }

  @Override
  public String unit() {
    return "percent";
  }

  @Override
  public int compareTo(Percent other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return text();
  }
}
