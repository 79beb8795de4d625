/**
 * What changes for somebody who moves from one room to another. Start from {@link
 * stackside.derive.difference.Differences}.
 *
 * <p>May import what {@code derive} may.
 */
@NullMarked
package stackside.derive.difference;

import org.jspecify.annotations.NullMarked;
