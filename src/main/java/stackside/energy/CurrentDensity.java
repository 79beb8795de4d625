package stackside.energy;

import stackside.quantity.Amperes;
import stackside.quantity.Seconds;

/**
 * Current over area, in amperes per square centimetre; the current is assumed to be spread evenly.
 */
public record CurrentDensity(double amperesPerSquareCentimetre) {

  /** J = I / A. */
  public static CurrentDensity of(Amperes current, Area area) {
    return new CurrentDensity(current.value() / area.squareCentimetres());
  }

  /**
   * How many times more heat this density makes than the other in the same tissue: the ratio of the
   * squares.
   */
  public double heatingAgainst(CurrentDensity other) {
    double ratio = amperesPerSquareCentimetre / other.amperesPerSquareCentimetre;
    return ratio * ratio;
  }

  /**
   * The temperature rise in kelvin if no heat leaves the tissue: J² t / (σ ρ c) (Pearce,
   * Electrosurgery, 1986). It does not predict what happens under a neutral electrode (Pearce, IEEE
   * EMBC 2015, 2559).
   */
  public double adiabaticRise(Tissue tissue, Seconds time) {
    double perSquareMetre = amperesPerSquareCentimetre * 1e4;
    return perSquareMetre
        * perSquareMetre
        * time.value()
        / (tissue.conductivity() * tissue.density() * tissue.heatCapacity());
  }
}
