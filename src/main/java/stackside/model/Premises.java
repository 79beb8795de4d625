package stackside.model;

import java.util.List;
import stackside.source.Location;

/**
 * A place of the unit with its own staff and telephone list, such as one hospital.
 *
 * @param contacts together they cover every hour of the week
 */
public record Premises(
    Location at, ThingId id, Fact<String> name, @AtLeastOne List<Contact> contacts)
    implements Thing {
  public Premises {
    contacts = List.copyOf(contacts);
  }

  @Override
  public String title() {
    return name.value();
  }

  /** By the id alone; hashing all that hangs on a thing would cost more than any lookup. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
