package stackside.model;

import stackside.source.Location;

/** A value together with the place where its author wrote it. */
public record Fact<T>(T value, Location at) {}
