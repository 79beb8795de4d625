package stackside.model;

import stackside.source.Location;

/** A part of the unit that is signed as one thing, although it has no id in the content. */
public final class UnitPart implements Thing {
  private final Location at;
  private final ThingId id;
  private final String title;

  private UnitPart(Location at, String slug, String title) {
    this.at = at;
    this.id = new ThingId(Kind.UNIT, slug);
    this.title = title;
  }

  /**
   * What applies to the whole unit: who signs, how long a signature lasts, how output is judged.
   */
  static UnitPart policies(UnitDetails details) {
    return new UnitPart(details.name().at(), "policies", "Policies of the unit");
  }

  /** All publications that the unit names. */
  static UnitPart sources() {
    return new UnitPart(Location.startOf("sources.yaml"), "sources", "Sources of the unit");
  }

  @Override
  public Location at() {
    return at;
  }

  @Override
  public ThingId id() {
    return id;
  }

  @Override
  public String title() {
    return title;
  }
}
