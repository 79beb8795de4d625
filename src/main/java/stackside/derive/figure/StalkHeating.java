package stackside.derive.figure;

import java.util.List;
import stackside.energy.Area;
import stackside.energy.CurrentDensity;
import stackside.quantity.Amperes;
import stackside.quantity.Millimetres;

/**
 * How much faster a thinner stalk is heated. At the same current the rate is proportional to the
 * square of the current density, and therefore to the inverse fourth power of the diameter
 * (Gershman, Thomson and Veres, textbook chapter 40, Polypectomy; read). At the same power in the
 * same length of stalk it is proportional to the inverse area only (calculated).
 *
 * @param atSameCurrent relative to the widest stalk
 * @param atSamePower relative to the widest stalk
 */
public record StalkHeating(Millimetres diameter, double atSameCurrent, double atSamePower) {
  private static final List<Integer> DIAMETERS = List.of(10, 8, 6, 5, 4);

  /** Any current will do, because it cancels out. */
  private static final Amperes CURRENT = new Amperes(1);

  /** Stalks from wide to thin. */
  public static List<StalkHeating> stalks() {
    CurrentDensity widest = density(DIAMETERS.get(0));
    return DIAMETERS.stream()
        .map(
            diameter ->
                new StalkHeating(
                    new Millimetres(diameter),
                    density(diameter).heatingAgainst(widest),
                    area(DIAMETERS.get(0)) / area(diameter)))
        .toList();
  }

  private static double area(int millimetres) {
    return Area.ofCircle(millimetres / 10.0).squareCentimetres();
  }

  private static CurrentDensity density(int millimetres) {
    return CurrentDensity.of(CURRENT, Area.ofCircle(millimetres / 10.0));
  }
}
