package stackside.model;

import stackside.source.Location;

/** Whom to call, and when. */
public record Contact(
    Location at, ThingId id, Fact<String> role, Fact<String> phone, Fact<ContactHours> hours)
    implements Thing {

  @Override
  public String title() {
    return role.value();
  }
}
