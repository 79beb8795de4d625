/**
 * Puts output files on the disk: reads the register of what was issued, stages a whole folder
 * aside, swaps it in, and recovers from a swap that was cut short. Leaves alone any folder that is
 * not its own.
 *
 * <p>May import {@code render} for output files, and what that imports.
 */
@NullMarked
package stackside.publish;

import org.jspecify.annotations.NullMarked;
