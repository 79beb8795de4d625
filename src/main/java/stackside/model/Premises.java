package stackside.model;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.List;
import stackside.source.Location;

/**
 * A place of the unit with its own staff and telephone list, such as a hospital.
 *
 * @param contacts together they cover every hour of the week
 */
public record Premises(
    Location at, ThingId id, Fact<String> name, @AtLeastOne List<Contact> contacts)
    implements Thing {
  public Premises {
    contacts = List.copyOf(contacts);
  }

  /**
   * Who answers at an hour of the week: the contacts whose hours include it or, if there are none,
   * those who cover all other hours.
   */
  public List<Contact> answering(DayOfWeek day, LocalTime time) {
    List<Contact> then =
        contacts.stream().filter(each -> each.hours().value().hold(day, time)).toList();
    return then.isEmpty()
        ? contacts.stream().filter(each -> each.hours().value().allOthers()).toList()
        : then;
  }

  @Override
  public String title() {
    return name.value();
  }

  /** Hashes the id only; the full record is slow. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
