package stackside.derive.figure;

import java.util.List;
import stackside.energy.Area;
import stackside.energy.CurrentDensity;
import stackside.quantity.Amperes;

/**
 * One current through three areas on its way from snare to pad: the worked example of Gershman,
 * Thomson and Veres, textbook chapter 40, Polypectomy (read). A snare closes a polyp of 1 cm to
 * half its width, 0.2 A flow, and the pad measures 10 cm by 10 cm.
 */
public final class SnareToPad {
  public static final Amperes CURRENT = new Amperes(0.2);
  public static final double LOOP_CENTIMETRES = 0.5;
  public static final double BASE_CENTIMETRES = 1;
  public static final double PAD_CENTIMETRES = 10;

  private SnareToPad() {}

  /** One of the areas. */
  public enum Station {
    LOOP,
    BASE,
    PAD
  }

  /**
   * The current through one area.
   *
   * @param heating current density squared, relative to that at the base
   */
  public record Stop(Station station, Area area, CurrentDensity density, double heating) {}

  /** The three areas in the order in which the current meets them. */
  public static List<Stop> stops() {
    return List.of(
        stop(Station.LOOP, Area.ofCircle(LOOP_CENTIMETRES)),
        stop(Station.BASE, base()),
        stop(Station.PAD, Area.ofRectangle(PAD_CENTIMETRES, PAD_CENTIMETRES)));
  }

  private static Stop stop(Station station, Area area) {
    CurrentDensity density = CurrentDensity.of(CURRENT, area);
    return new Stop(
        station, area, density, density.heatingAgainst(CurrentDensity.of(CURRENT, base())));
  }

  private static Area base() {
    return Area.ofCircle(BASE_CENTIMETRES);
  }
}
