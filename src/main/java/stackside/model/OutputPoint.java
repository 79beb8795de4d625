package stackside.model;

import stackside.quantity.Ohms;
import stackside.quantity.Watts;

/** What a mode delivers into one load. */
public record OutputPoint(Ohms load, Watts power) {}
