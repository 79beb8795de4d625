/**
 * Signatures, review dates, stored programs and output checks on a given day. Start from {@link
 * stackside.derive.standing.Standing}.
 *
 * <p>May import what {@code derive} may.
 */
@NullMarked
package stackside.derive.standing;

import org.jspecify.annotations.NullMarked;
