/**
 * The analyses: everything that follows from the unit and is never typed twice. Each has its own
 * package below this one, and is a function from the unit and other analyses to records.
 *
 * <p>May import {@code model}, {@code energy} and what those import. Knows no rules, no pages, no
 * disk, and no day except the one that it is given.
 */
@NullMarked
package stackside.derive;

import org.jspecify.annotations.NullMarked;
