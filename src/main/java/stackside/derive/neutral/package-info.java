/**
 * What each approved setting asks of its neutral electrode. For physics pages only, and for the
 * electrode alone: nothing here says how long current may flow in tissue. Start from {@link
 * stackside.derive.neutral.ElectrodeLoad}.
 *
 * <p>May import what {@code derive} may.
 */
@NullMarked
package stackside.derive.neutral;

import org.jspecify.annotations.NullMarked;
