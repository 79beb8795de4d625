/**
 * Reads a finished card back from its bytes into facts, such as pages, fonts, letter heights and
 * the text of its QR code, and judges them. It trusts the PDF and not the plan it was painted from.
 *
 * <p>May import {@code render}, {@code check} and what those import; not the cards.
 */
@NullMarked
package stackside.inspect;

import org.jspecify.annotations.NullMarked;
