/**
 * Makes one harmful edit in every component of the model, one at a time, and tests what notices it.
 * Start from {@link stackside.seeded.SeededFaultsTest}.
 */
@NullMarked
package stackside.seeded;

import org.jspecify.annotations.NullMarked;
