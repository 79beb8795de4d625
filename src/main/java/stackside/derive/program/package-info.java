/**
 * What the assets' stored programs are known to hold, compared with what is approved. Start from
 * {@link stackside.derive.program.Readings}.
 *
 * <p>May import what {@code derive} may.
 */
@NullMarked
package stackside.derive.program;

import org.jspecify.annotations.NullMarked;
