package stackside.model;

import stackside.source.Location;

/** A second approved answer to the same question: its name and when to use it. */
public record Alternative(Location at, Fact<String> name, Fact<String> when) {}
