/**
 * The circuit of machine, sockets, cables, instrument, neutral electrode and pedals, and what
 * becomes of the current when a single thing in it is wrong: where it goes, what is seen and heard,
 * and how bad that is.
 *
 * <p>May import what {@code derive} may.
 */
@NullMarked
package stackside.derive.circuit;

import org.jspecify.annotations.NullMarked;
