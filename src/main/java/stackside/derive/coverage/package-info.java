/**
 * What each room answers for each lesion, site, step and patient group, and where it has no answer
 * or two. Start from {@link stackside.derive.coverage.Coverage}.
 *
 * <p>May import what {@code derive} may.
 */
@NullMarked
package stackside.derive.coverage;

import org.jspecify.annotations.NullMarked;
