package stackside.model;

import stackside.source.Location;

/** One pedal of a foot switch. */
public record Pedal(Location at, Fact<PedalColour> colour, Fact<PedalAction> does) {}
