/**
 * Turns what an endoscopy unit knows about its electrosurgical generators into an induction website
 * and one-page room cards, and refuses to publish what does not hold together.
 *
 * <p>Data flows one way. Each stage is a function from values to values; only the first and the
 * last touch the disk, and there is no clock, logger or console in between.
 *
 * <pre>
 * content → model → derive → check → render.site, render.card → inspect → publish
 * </pre>
 *
 * <ul>
 *   <li>{@code source}: where a fact was written and what is wrong with it
 *   <li>{@code quantity}: watts, volts, ohms and the like, never a bare number
 *   <li>{@code energy}: the physics of current into a load
 *   <li>{@code model}: the unit as linked, immutable records
 *   <li>{@code content}: reads YAML, Markdown and CSV into the model
 *   <li>{@code derive}: everything computed from the unit and never typed twice
 *   <li>{@code check}: the rule catalogue, over the unit and what is derived from it
 *   <li>{@code render}: what pages and cards share; {@code render.site} writes the pages, {@code
 *       render.card} the cards
 *   <li>{@code inspect}: reads the finished cards back and judges them
 *   <li>{@code publish}: puts the finished files on the disk, all or none
 *   <li>{@code cli}: arguments, exit codes, printing; nothing imports it
 * </ul>
 *
 * <p>A package may import what its imports may import. {@code ArchitectureTest} holds the arrows.
 * To read the code, begin with {@code model}, then one rule with its test and its page, then {@code
 * cli}.
 */
@NullMarked
package stackside;

import org.jspecify.annotations.NullMarked;
