package stackside.quantity;

import java.util.List;

/**
 * A peak voltage in volts: the highest instantaneous value, never peak to peak or root mean square.
 */
public record PeakVolts(double value) implements Quantity, Comparable<PeakVolts> {

  /** Reads a peak voltage from text such as {@code 400 V peak}. */
  public static final Measure<PeakVolts> MEASURE =
      new Measure<>(
          "a peak voltage",
          List.of(new Measure.UnitName("V peak", 1), new Measure.UnitName("kV peak", 1000)),
          PeakVolts::new);

  public PeakVolts {
    Quantity.requireFinite(value);
  }

  @Override
  public String unit() {
    return "V peak";
  }

  @Override
  public int compareTo(PeakVolts other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return text();
  }
}
