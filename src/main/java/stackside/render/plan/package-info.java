/**
 * What each room card shows, in reading order: words, with their place in the content, and
 * drawings. It says nothing about type or position on paper. The PDF and the web page of the card
 * are both made from it. Start from {@link stackside.render.plan.CardPlanner}.
 *
 * <p>May import what {@code render} may.
 */
@NullMarked
package stackside.render.plan;

import org.jspecify.annotations.NullMarked;
