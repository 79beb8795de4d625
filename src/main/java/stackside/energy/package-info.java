/**
 * The physics: what a mode delivers into a load, crest factor, RMS current, heating factor and
 * current density. This package knows quantities only, no machine and no unit.
 *
 * <p>Start from {@link stackside.energy.OutputCurve}. Loads are resistors. Every figure covers the
 * published loads only.
 *
 * <p>May import {@code quantity}.
 */
@NullMarked
package stackside.energy;

import org.jspecify.annotations.NullMarked;
