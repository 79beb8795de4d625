/**
 * What a machine's modes deliver over its published load range, and whether measurements agree.
 * Start from {@link stackside.derive.output.ModeOutput}.
 *
 * <p>May import what {@code derive} may.
 */
@NullMarked
package stackside.derive.output;

import org.jspecify.annotations.NullMarked;
