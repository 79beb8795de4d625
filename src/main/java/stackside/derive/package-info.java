/**
 * The analyses: what follows from the unit and is never typed twice. Each stands in a package of
 * its own below this one, and is a function from the unit, and from other analyses, to records.
 *
 * <p>May import {@code model}, {@code energy} and what those import. Knows no rules, no pages, no
 * disk and no day other than the one it is given.
 */
@NullMarked
package stackside.derive;

import org.jspecify.annotations.NullMarked;
