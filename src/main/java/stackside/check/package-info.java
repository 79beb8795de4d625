/**
 * The rules about content, and the form of every rule. A class holds the rules of one subject; it
 * lists their ids, severities and summaries, and each rule is a function from a checked unit to
 * what is wrong. Start from {@link stackside.check.ContentRules} and one subject, such as {@code
 * ArgonRules}.
 *
 * <p>May import {@code model}, {@code derive} and what those import. A rule depends on no other
 * rule and not on the order in which they run.
 */
@NullMarked
package stackside.check;

import org.jspecify.annotations.NullMarked;
