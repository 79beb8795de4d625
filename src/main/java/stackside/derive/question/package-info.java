/**
 * Questions about a place, for people to check themselves, made of the unit's own data: the right
 * answer there, and the right answers elsewhere as the wrong ones. Start from {@link
 * stackside.derive.question.SelfChecks}.
 *
 * <p>May import what {@code derive} may.
 */
@NullMarked
package stackside.derive.question;

import org.jspecify.annotations.NullMarked;
