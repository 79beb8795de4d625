/**
 * How an instrument or a neutral electrode reaches a socket through the cables and adaptors that a
 * room keeps, and which voltage the chain withstands. Start from {@link
 * stackside.derive.chain.Chains}.
 *
 * <p>May import what {@code derive} may.
 */
@NullMarked
package stackside.derive.chain;

import org.jspecify.annotations.NullMarked;
