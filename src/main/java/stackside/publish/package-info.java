/**
 * Writes output files to the disk: reads the register of what was issued, stages a whole new
 * folder, swaps it in, and recovers from an interrupted swap. Never touches a folder that is not
 * its own.
 *
 * <p>May import {@code render} for output files, and what that imports.
 */
@NullMarked
package stackside.publish;

import org.jspecify.annotations.NullMarked;
