/**
 * What changes for somebody's hands between one room and another. Start from {@link
 * stackside.derive.difference.Differences}.
 *
 * <p>May import what {@code derive} may.
 */
@NullMarked
package stackside.derive.difference;

import org.jspecify.annotations.NullMarked;
