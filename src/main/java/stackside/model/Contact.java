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

  /** By the id alone; hashing all that hangs on a thing would cost more than any lookup. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
