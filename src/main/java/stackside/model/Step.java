package stackside.model;

import stackside.source.Location;

/** A part of a task that has its own settings, such as resection or margin. */
public record Step(Location at, ThingId id, Fact<String> name) implements Thing {

  @Override
  public String title() {
    return name.value();
  }
}
