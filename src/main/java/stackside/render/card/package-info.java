/**
 * The room cards: a plan of blocks that are measured and then painted on one page, each knowing
 * where in the content its words come from.
 *
 * <p>May import {@code render}, {@code check} for the words of the catalogue, and what those
 * import; not the pages.
 */
@NullMarked
package stackside.render.card;

import org.jspecify.annotations.NullMarked;
