/**
 * The room cards: a plan's blocks are measured and then painted on one page. Each block knows where
 * in the content its words come from.
 *
 * <p>May import {@code render}, {@code check} for the words of the catalogue, and what those
 * import, but not the pages.
 */
@NullMarked
package stackside.render.card;

import org.jspecify.annotations.NullMarked;
