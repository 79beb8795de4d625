/**
 * The pages of the site folder. Each has one public record, which is all that its template sees.
 * The result is output files.
 *
 * <p>May import {@code render}, {@code check} for the words of the catalogue, and what those
 * import, but not the cards.
 */
@NullMarked
package stackside.render.site;

import org.jspecify.annotations.NullMarked;
