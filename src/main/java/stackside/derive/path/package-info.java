/**
 * What follows from induction paths: how long they take to read, and which edition of each thing
 * was read. Start from {@link stackside.derive.path.PathReading}.
 *
 * <p>May import what {@code derive} may.
 */
@NullMarked
package stackside.derive.path;

import org.jspecify.annotations.NullMarked;
