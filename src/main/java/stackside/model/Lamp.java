package stackside.model;

import stackside.source.Location;

/** A lamp on a machine. */
public record Lamp(Location at, LampId id, Fact<String> name) {}
