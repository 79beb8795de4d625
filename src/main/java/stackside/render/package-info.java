/**
 * What pages and cards share: output files as values, links, the writing of numbers, and the
 * drawings of sockets and pedals. Renders nothing finished itself.
 *
 * <p>May import {@code derive} and what that imports, and none of the packages below it.
 */
@NullMarked
package stackside.render;

import org.jspecify.annotations.NullMarked;
