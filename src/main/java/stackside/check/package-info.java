/**
 * The rule catalogue: one class a rule, each a function from the unit and its analyses to problems.
 * A rule carries its own id, severity and words, and the rule pages are made from them.
 *
 * <p>May import {@code model}, {@code derive} and what those import. A rule depends on no other
 * rule and not on the order in which they run.
 */
@NullMarked
package stackside.check;

import org.jspecify.annotations.NullMarked;
