package stackside.model;

import stackside.source.Location;

/** The slot of a stored program and the name that the display shows. */
public record StoredProgram(Location at, Fact<Integer> slot, Fact<String> shownAs) {}
