package stackside.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The powers that a mode can be set to: equal steps from the lower end, both ends included. */
public record PowerRange(Watts from, Watts to, Watts step) {
  private static final Pattern FORM = Pattern.compile("(.+) to (.+) in steps of (.+)");
  private static final double ON_STEP = 1e-9;

  public PowerRange {
    if (from.value() > to.value() || step.value() <= 0) {
      throw new IllegalArgumentException("no such range: " + from + " to " + to + " by " + step);
    }
  }

  /**
   * Reads "10 W to 120 W in steps of 5 W".
   *
   * @throws UnreadableQuantity if the text is not such a range
   */
  public static PowerRange parse(String text) {
    Matcher form = FORM.matcher(text.strip());
    if (!form.matches()) {
      throw new UnreadableQuantity(
          "'" + text + "' is not a power range with a step",
          "write 'LOWEST to HIGHEST in steps of STEP', each with W");
    }
    Watts from = Watts.MEASURE.parse(form.group(1));
    Watts to = Watts.MEASURE.parse(form.group(2));
    Watts step = Watts.MEASURE.parse(form.group(3));
    if (from.value() >= to.value() || step.value() <= 0) {
      throw new UnreadableQuantity(
          "'" + text + "' contains no power", "write the lower power first, with a step over 0 W");
    }
    return new PowerRange(from, to, step);
  }

  /** Whether a power lies between the ends, which are included. */
  public boolean holds(Watts power) {
    return from.value() <= power.value() && power.value() <= to.value();
  }

  /** Whether a power in the range falls on one of the steps. */
  public boolean onStep(Watts power) {
    double steps = (power.value() - from.value()) / step.value();
    return Math.abs(steps - Math.rint(steps)) < ON_STEP;
  }

  /** Whether the control can be set to this power. */
  public boolean canBeSet(Watts power) {
    return holds(power) && onStep(power);
  }

  /** The range as an author writes it. */
  public String text() {
    return from.text() + " to " + to.text() + " in steps of " + step.text();
  }
}
