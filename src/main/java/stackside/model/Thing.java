package stackside.model;

import stackside.source.Location;

/** Anything that has its own id and can be linked to. */
public interface Thing {
  Location at();

  ThingId id();

  /** The name that people use for it. */
  String title();
}
