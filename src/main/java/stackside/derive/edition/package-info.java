/**
 * Cards as controlled documents: the register of every issue, the edition that each card is at, and
 * what the next issue does with it. Start from {@link stackside.derive.edition.Register}; the
 * previous register comes in as a value.
 *
 * <p>May import what {@code derive} may.
 */
@NullMarked
package stackside.derive.edition;

import org.jspecify.annotations.NullMarked;
