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

  /** Hashes the id only; the full record is slow. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
