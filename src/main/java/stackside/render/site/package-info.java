/**
 * The pages of the site folder: one public record a page, which is all its template sees, and
 * output files as the result.
 *
 * <p>May import {@code render}, {@code check} for the words of the catalogue, and what those
 * import; not the cards.
 */
@NullMarked
package stackside.render.site;

import org.jspecify.annotations.NullMarked;
