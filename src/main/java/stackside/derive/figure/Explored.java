package stackside.derive.figure;

import stackside.energy.Area;
import stackside.energy.CurrentDensity;
import stackside.energy.Heating;
import stackside.quantity.Amperes;
import stackside.quantity.Seconds;

/**
 * What the site's explorer calculates, for learning only: one current through a snare's loop and a
 * pad, assumed to be spread evenly in both. The page's script does the same calculation, and a test
 * compares the two.
 *
 * @param loop amperes per square centimetre in the loop
 * @param pad amperes per square centimetre under the pad
 * @param heating how many times more the loop is heated than the pad
 * @param factor heating factor under the pad, in ampere-squared seconds
 */
public record Explored(double loop, double pad, double heating, double factor) {

  public static Explored of(
      Amperes current, double loopMillimetres, double padCentimetres, double seconds) {
    CurrentDensity loop = CurrentDensity.of(current, Area.ofCircle(loopMillimetres / 10));
    CurrentDensity pad =
        CurrentDensity.of(current, Area.ofRectangle(padCentimetres, padCentimetres));
    return new Explored(
        loop.amperesPerSquareCentimetre(),
        pad.amperesPerSquareCentimetre(),
        loop.heatingAgainst(pad),
        Heating.factor(current, new Seconds(seconds)).value());
  }
}
