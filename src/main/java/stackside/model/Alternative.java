package stackside.model;

import stackside.source.Location;

/** A second approved answer for the same key: its name and when to take it. */
public record Alternative(Location at, Fact<String> name, Fact<String> when) {}
