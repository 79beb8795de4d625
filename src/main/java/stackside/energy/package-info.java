/**
 * The physics: what a mode delivers into a load, crest factor, RMS current, heating factor and
 * current density. Knows no machine and no unit, only quantities.
 *
 * <p>Start from {@link stackside.energy.OutputCurve}. Loads are resistors; everything is over the
 * published loads only.
 *
 * <p>May import {@code quantity}.
 */
@NullMarked
package stackside.energy;

import org.jspecify.annotations.NullMarked;
