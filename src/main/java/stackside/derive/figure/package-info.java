/**
 * The figures of the handbook: which ones exist, where the unit places them, and the numbers that
 * they show. Start from {@link stackside.derive.figure.FigureName}.
 *
 * <p>May import what {@code derive} may.
 */
@NullMarked
package stackside.derive.figure;

import org.jspecify.annotations.NullMarked;
