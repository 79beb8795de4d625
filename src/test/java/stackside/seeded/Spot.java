package stackside.seeded;

import stackside.source.Location;

/**
 * One place of the content where a component of the model is written.
 *
 * @param component the record and its component: {@code Profile.step}
 * @param value what was read there
 */
record Spot(String component, Object value, Location at) {}
