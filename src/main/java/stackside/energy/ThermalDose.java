package stackside.energy;

import stackside.quantity.Seconds;

/**
 * Converts time at a temperature into the time at 43 °C with the same effect: a factor of 2 per
 * degree above 43 °C, of 4 per degree below (Sapareto and Dewey, Int J Radiat Oncol Biol Phys 1984;
 * from memory).
 */
public final class ThermalDose {
  private ThermalDose() {}

  /** The equivalent time at 43 °C. */
  public static Seconds at43(double celsius, Seconds time) {
    double base = celsius >= 43 ? 0.5 : 0.25;
    return new Seconds(time.value() * StrictMath.pow(base, 43 - celsius));
  }
}
