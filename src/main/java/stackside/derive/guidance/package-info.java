/**
 * What published work or common sense would ask about in an approved answer. Nothing here is wrong
 * by itself: the unit can answer in place. Start from {@link stackside.derive.guidance.Questions}.
 *
 * <p>May import what {@code derive} may.
 */
@NullMarked
package stackside.derive.guidance;

import org.jspecify.annotations.NullMarked;
