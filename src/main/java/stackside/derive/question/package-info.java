/**
 * Questions with which people can test themselves on a place, made from the unit's own data. The
 * answers that are right elsewhere serve as the wrong ones. Start from {@link
 * stackside.derive.question.SelfChecks}.
 *
 * <p>May import what {@code derive} may.
 */
@NullMarked
package stackside.derive.question;

import org.jspecify.annotations.NullMarked;
