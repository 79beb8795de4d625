/**
 * What stands on each room card, in reading order: words with the place in the content that they
 * come from, drawings, and nothing about type or place on paper. The PDF and the same card as a
 * page are both made from it. Start from {@link stackside.render.plan.CardPlanner}.
 *
 * <p>May import what {@code render} may.
 */
@NullMarked
package stackside.render.plan;

import org.jspecify.annotations.NullMarked;
