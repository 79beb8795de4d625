/**
 * The peak voltage of each approved setting compared with the weakest rating between machine and
 * patient. Start from {@link stackside.derive.voltage.VoltageCheck}.
 *
 * <p>May import what {@code derive} may.
 */
@NullMarked
package stackside.derive.voltage;

import org.jspecify.annotations.NullMarked;
