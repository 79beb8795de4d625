/**
 * What each approved setting demands of its neutral electrode. This is for physics pages only, and
 * about the electrode alone: nothing here says how long current may flow in tissue. Start from
 * {@link stackside.derive.neutral.ElectrodeLoad}.
 *
 * <p>May import what {@code derive} may.
 */
@NullMarked
package stackside.derive.neutral;

import org.jspecify.annotations.NullMarked;
