/**
 * What a handbook page rests on: its numbered claims with their sources, and the parts of its text
 * that name no ground. Start from {@link stackside.derive.handbook.Grounds}.
 *
 * <p>May import what {@code derive} may.
 */
@NullMarked
package stackside.derive.handbook;

import org.jspecify.annotations.NullMarked;
