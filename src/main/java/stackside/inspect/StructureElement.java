package stackside.inspect;

import java.util.Optional;

/**
 * One element of what a screen reader follows, in its order.
 *
 * @param depth how many elements it is in
 * @param text the words directly in it
 * @param alternative the words that stand for it
 * @param scope of a header cell: Column or Row
 */
public record StructureElement(
    String role, int depth, String text, Optional<String> alternative, Optional<String> scope) {}
