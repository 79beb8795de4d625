/**
 * What pages and cards share: output files as values, links, number formatting, and the drawings of
 * sockets and pedals. Makes no finished page or card itself.
 *
 * <p>May import {@code derive} and what that imports, but none of the packages below it.
 */
@NullMarked
package stackside.render;

import org.jspecify.annotations.NullMarked;
