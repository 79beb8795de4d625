/**
 * Whether a drill's checks are in the order that finds the cause soonest. Start from {@link
 * stackside.derive.drill.DrillOrder}.
 *
 * <p>May import what {@code derive} may.
 */
@NullMarked
package stackside.derive.drill;

import org.jspecify.annotations.NullMarked;
