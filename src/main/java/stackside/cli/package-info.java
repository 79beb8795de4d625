/**
 * The command line: arguments in, printed problems and results and an exit code out. The only place
 * that knows the console and the day, and the one that strings the stages together.
 *
 * <p>With {@code --format json} the commands {@code check}, {@code draft} and {@code issue} print
 * one document on standard output and nothing else; {@code explain json} describes it.
 *
 * <p>One run is short, so a launcher does well to start Java with {@code -XX:TieredStopAtLevel=1
 * -XX:+UseSerialGC}, and in a UTF-8 locale, without which Java cannot open names beyond ASCII.
 *
 * <p>May import every package; none imports it.
 */
@NullMarked
package stackside.cli;

import org.jspecify.annotations.NullMarked;
