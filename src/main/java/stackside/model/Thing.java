package stackside.model;

import stackside.source.Location;

/** Whatever has an id of its own and can be linked to. */
public interface Thing {
  Location at();

  ThingId id();

  /** What people call it. */
  String title();
}
