/**
 * Reads a finished card back from its bytes into facts, such as pages, fonts, letter heights and
 * the text of its QR code, and judges them. It trusts the PDF and not the plan it was painted from;
 * only the words are judged on the plan, which knows where in the content they come from. Start
 * from {@link stackside.inspect.CardRules}.
 *
 * <p>May import {@code render}, {@code check} and what those import; not the cards.
 */
@NullMarked
package stackside.inspect;

import org.jspecify.annotations.NullMarked;
