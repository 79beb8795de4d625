/**
 * Seeds a harmful edit into every component of the model, one at a time, and asks who notices.
 * Start from {@link stackside.seeded.SeededFaultsTest}.
 */
@NullMarked
package stackside.seeded;

import org.jspecify.annotations.NullMarked;
