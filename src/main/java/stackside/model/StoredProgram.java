package stackside.model;

import stackside.source.Location;

/** The slot that a program is stored in and the name that the display shows. */
public record StoredProgram(Location at, Fact<Integer> slot, Fact<String> shownAs) {}
