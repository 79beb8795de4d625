/**
 * The command line: arguments in, printed problems and results and an exit code out. The only place
 * that knows the console and the day, and the one that strings the stages together.
 *
 * <p>May import every package; none imports it.
 */
@NullMarked
package stackside.cli;

import org.jspecify.annotations.NullMarked;
