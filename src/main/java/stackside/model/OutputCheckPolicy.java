package stackside.model;

import stackside.quantity.Months;
import stackside.quantity.Percent;
import stackside.source.Location;

/**
 * How measured output is judged.
 *
 * @param tolerance allowed difference from the output expected at the test load
 * @param above settings below this share of the rated power are not judged
 */
public record OutputCheckPolicy(
    Location at, Fact<Percent> tolerance, Fact<ShareOfRatedPower> above, Fact<Months> every) {}
