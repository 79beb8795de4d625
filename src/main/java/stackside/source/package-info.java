/**
 * Where a fact was written and what is wrong with it. Start from {@link stackside.source.Problem}.
 * A problem points to a {@link stackside.source.Location}; {@link stackside.source.Sources} shows
 * the line as its author wrote it. Imports nothing of ours.
 */
@NullMarked
package stackside.source;

import org.jspecify.annotations.NullMarked;
