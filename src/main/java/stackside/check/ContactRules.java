package stackside.check;

import static stackside.check.Rule.error;
import static stackside.check.Rule.warning;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import stackside.model.Contact;
import stackside.model.ContactHours;
import stackside.model.Kind;
import stackside.model.Premises;

/** Whom to call, and when. */
final class ContactRules {

  private static final int MINUTES_A_DAY = 24 * 60;

  private ContactRules() {}

  static List<Rule<CheckedUnit>> rules() {
    return List.of(
        error(
            "contact-hours-hole",
            "the contacts of a location leave hours of the week uncovered",
            ContactRules::contactHoursHole),
        error(
            "phone-unusable",
            "a phone number cannot be dialled, or belongs to two contacts",
            ContactRules::phoneUnusable),
        warning(
            "phone-of-other-location",
            "contacts of two locations have one phone number",
            ContactRules::phoneOfOtherLocation));
  }

  private static List<Finding> contactHoursHole(CheckedUnit checked) {
    if (checked.unit().anyBroken(Kind.CONTACT)) {
      return List.of();
    }
    return checked.unit().details().locations().stream()
        .flatMap(location -> contactHoursHole(location).stream())
        .toList();
  }

  private static Optional<Finding> contactHoursHole(Premises location) {
    BitSet covered = new BitSet(7 * MINUTES_A_DAY);
    for (Contact contact : location.contacts()) {
      if (contact.hours().value().allOthers()) {
        return Optional.empty();
      }
      contact.hours().value().stretches().forEach(stretch -> cover(covered, stretch));
    }
    if (covered.cardinality() == 7 * MINUTES_A_DAY) {
      return Optional.empty();
    }
    int from = firstUncovered(covered);
    int next = covered.nextSetBit(from);
    int to = next < 0 ? Math.max(0, covered.nextSetBit(0)) : next;
    return Optional.of(
        Finding.at(
                location.name().at(),
                "at %s nobody can be called from %s to %s"
                    .formatted(Wording.quoted(location), time(from), time(to)))
            .help("add a contact for these hours, or one with 'all other hours'"));
  }

  /** Where the first hole begins. A hole that runs past the end of the week begins before it. */
  private static int firstUncovered(BitSet covered) {
    int from = covered.nextClearBit(Math.max(0, covered.nextSetBit(0)));
    return from < 7 * MINUTES_A_DAY ? from : 0;
  }

  /** A stretch that ends at or before its start runs past midnight, on Sunday into Monday. */
  private static void cover(BitSet covered, ContactHours.Stretch stretch) {
    int from = stretch.from().toSecondOfDay() / 60;
    int to = stretch.to().toSecondOfDay() / 60;
    int length = to > from ? to - from : to - from + MINUTES_A_DAY;
    for (DayOfWeek day : stretch.days()) {
      int start = (day.getValue() - 1) * MINUTES_A_DAY + from;
      for (int minute = start; minute < start + length; minute++) {
        covered.set(minute % (7 * MINUTES_A_DAY));
      }
    }
  }

  private static String time(int minute) {
    DayOfWeek day = DayOfWeek.of(minute / MINUTES_A_DAY + 1);
    return day.name().charAt(0)
        + day.name().substring(1).toLowerCase(Locale.ROOT)
        + " "
        + LocalTime.ofSecondOfDay(minute % MINUTES_A_DAY * 60L);
  }

  private static List<Finding> phoneUnusable(CheckedUnit checked) {
    return checked.unit().details().locations().stream()
        .flatMap(location -> phoneUnusable(location).stream())
        .toList();
  }

  private static List<Finding> phoneUnusable(Premises location) {
    List<Finding> found = new ArrayList<>();
    for (int i = 0; i < location.contacts().size(); i++) {
      Contact contact = location.contacts().get(i);
      Optional<Contact> same =
          location.contacts().subList(0, i).stream()
              .filter(other -> number(other).equals(number(contact)))
              .findFirst();
      if (!canBeDialled(contact)) {
        found.add(
            Finding.at(
                    contact.phone().at(),
                    "'%s' cannot be dialled".formatted(contact.phone().value()))
                .help("write the number in digits, with a word before it if needed: ext., bleep"));
      } else if (same.isPresent()) {
        found.add(
            Finding.at(
                    contact.phone().at(),
                    "%s has the same number as %s"
                        .formatted(Wording.quoted(contact), Wording.quoted(same.orElseThrow())))
                .note(same.orElseThrow().phone().at(), "the same number")
                .help("correct one of the two, or merge them into one contact"));
      }
    }
    return found;
  }

  private static List<Finding> phoneOfOtherLocation(CheckedUnit checked) {
    List<Finding> found = new ArrayList<>();
    Map<String, Premises> known = new HashMap<>();
    Map<String, Contact> first = new HashMap<>();
    for (Premises location : checked.unit().details().locations()) {
      for (Contact contact : location.contacts()) {
        Premises elsewhere = known.putIfAbsent(number(contact), location);
        Contact same = first.putIfAbsent(number(contact), contact);
        if (elsewhere != null && same != null && !elsewhere.id().equals(location.id())) {
          found.add(phoneOfOtherLocation(contact, location, same, elsewhere));
        }
      }
    }
    return found;
  }

  private static Finding phoneOfOtherLocation(
      Contact contact, Premises location, Contact same, Premises elsewhere) {
    return Finding.at(
            contact.phone().at(),
            "%s at %s has the same number as %s at %s"
                .formatted(
                    Wording.quoted(contact),
                    Wording.quoted(location),
                    Wording.quoted(same),
                    Wording.quoted(elsewhere)))
        .note(same.phone().at(), "the same number")
        .help("write the number that is dialled in this hospital; if both share one, leave it");
  }

  private static boolean canBeDialled(Contact contact) {
    return contact
        .phone()
        .value()
        .matches("(?:\\p{L}+[.:]? )*[+(]?[0-9][0-9 ()./+-]*(?: \\p{L}+[.:]? [0-9]+)?");
  }

  private static String number(Contact contact) {
    return contact.phone().value().replaceAll("\\s", "");
  }
}
