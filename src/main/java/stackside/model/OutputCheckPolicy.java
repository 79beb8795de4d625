package stackside.model;

import stackside.quantity.Months;
import stackside.quantity.Percent;
import stackside.source.Location;

/**
 * How a measured output is judged.
 *
 * @param tolerance permitted difference from the output expected at the test load
 * @param above share of the rated power below which settings are not judged
 */
public record OutputCheckPolicy(
    Location at, Fact<Percent> tolerance, Fact<ShareOfRatedPower> above, Fact<Months> every) {}
