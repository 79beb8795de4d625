package stackside.model;

import stackside.source.Location;

/** The shape of a plug that a machine takes. */
public record Plug(Location at, ConnectorId id, Fact<String> name, Fact<PinShape> shape) {}
