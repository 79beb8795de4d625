package stackside.derive.figure;

import java.util.List;
import java.util.stream.IntStream;
import stackside.energy.ThermalDose;
import stackside.quantity.Seconds;

/**
 * How long each temperature takes to do what an hour at 43 °C does, by the thermal dose of Sapareto
 * and Dewey (1984; from memory).
 */
public record EqualDose(int celsius, Seconds time) {
  private static final int FROM = 43;
  private static final int TO = 50;
  private static final double HOUR = 3600;

  /** From 43 °C to 50 °C. */
  public static List<EqualDose> all() {
    return IntStream.rangeClosed(FROM, TO)
        .mapToObj(
            celsius ->
                new EqualDose(
                    celsius, new Seconds(HOUR / ThermalDose.at43(celsius, new Seconds(1)).value())))
        .toList();
  }
}
