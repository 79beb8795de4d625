/**
 * What published work or common sense would question in an approved answer. None of this is
 * necessarily wrong: the unit can answer in place. Start from {@link
 * stackside.derive.guidance.Questions}.
 *
 * <p>May import what {@code derive} may.
 */
@NullMarked
package stackside.derive.guidance;

import org.jspecify.annotations.NullMarked;
