package stackside.model;

import stackside.quantity.Millimetres;
import stackside.source.Location;

/**
 * The distances from which the two tiers of type on a card must be readable.
 *
 * @param near everything except the far tier
 * @param far title, make-safe line, drill titles and telephone numbers
 */
public record ReadingDistance(Location at, Fact<Millimetres> near, Fact<Millimetres> far) {}
