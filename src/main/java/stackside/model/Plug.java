package stackside.model;

import stackside.source.Location;

/** The shape of a plug as a machine takes it. */
public record Plug(Location at, ConnectorId id, Fact<String> name, Fact<PinShape> shape) {}
