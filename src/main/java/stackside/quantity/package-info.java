/**
 * Watts, volts, ohms and the other quantities of the trade. Each has its own type, read from text
 * such as {@code 30 W} and never from a bare number. Start from {@link
 * stackside.quantity.Quantity}. {@link stackside.quantity.Measure} reads one; {@link
 * stackside.quantity.Band} is a half-open range of them. Imports nothing of ours.
 */
@NullMarked
package stackside.quantity;

import org.jspecify.annotations.NullMarked;
