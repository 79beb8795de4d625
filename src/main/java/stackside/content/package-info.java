/**
 * The only place that knows YAML, Markdown and CSV: finds the files of a content folder, binds them
 * to the records of the model and links what they name. A mistake becomes a problem at its file and
 * line; what does not link stays in the unit as broken and brings no further problems.
 *
 * <p>May import {@code model} and what that imports. Reads the disk and never writes to it.
 */
@NullMarked
package stackside.content;

import org.jspecify.annotations.NullMarked;
