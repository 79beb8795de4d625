package stackside.model;

import stackside.quantity.Millimetres;
import stackside.source.Location;

/**
 * From how far the two tiers of type on a card must be read.
 *
 * @param near everything but the far tier
 * @param far title, make-safe line, drill titles, telephone numbers
 */
public record ReadingDistance(Location at, Fact<Millimetres> near, Fact<Millimetres> far) {}
