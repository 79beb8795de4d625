package stackside.check;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.model.Contact;
import stackside.model.ContactHours;
import stackside.model.Kind;
import stackside.model.Premises;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds hours of the week in which nobody of a location can be called. */
final class ContactHoursHole implements Rule {
  private static final Fault FAULT =
      new Fault(
          "contact-hours-hole",
          Severity.ERROR,
          "the contacts of a location leave hours of the week uncovered");

  private static final int DAY = 24 * 60;

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    if (analysis.unit().anyBroken(Kind.CONTACT)) {
      return List.of();
    }
    return analysis.unit().details().locations().stream()
        .flatMap(location -> problem(location).stream())
        .toList();
  }

  private static Optional<Problem> problem(Premises location) {
    BitSet covered = new BitSet(7 * DAY);
    for (Contact contact : location.contacts()) {
      if (contact.hours().value().allOthers()) {
        return Optional.empty();
      }
      contact.hours().value().stretches().forEach(stretch -> cover(covered, stretch));
    }
    if (covered.cardinality() == 7 * DAY) {
      return Optional.empty();
    }
    int from = firstUncovered(covered);
    int next = covered.nextSetBit(from);
    int to = next < 0 ? Math.max(0, covered.nextSetBit(0)) : next;
    return Optional.of(
        FAULT
            .at(
                location.name().at(),
                "at %s nobody can be called from %s to %s"
                    .formatted(Wording.quoted(location), time(from), time(to)))
            .help("add a contact for these hours, or one with 'all other hours'"));
  }

  /** Where the first hole begins; one that runs over the end of the week begins before it. */
  private static int firstUncovered(BitSet covered) {
    int from = covered.nextClearBit(Math.max(0, covered.nextSetBit(0)));
    return from < 7 * DAY ? from : 0;
  }

  /** A stretch that ends at or before its start runs past midnight, on Sunday into Monday. */
  private static void cover(BitSet covered, ContactHours.Stretch stretch) {
    int from = stretch.from().toSecondOfDay() / 60;
    int to = stretch.to().toSecondOfDay() / 60;
    int length = to > from ? to - from : to - from + DAY;
    for (DayOfWeek day : stretch.days()) {
      int start = (day.getValue() - 1) * DAY + from;
      for (int minute = start; minute < start + length; minute++) {
        covered.set(minute % (7 * DAY));
      }
    }
  }

  private static String time(int minute) {
    DayOfWeek day = DayOfWeek.of(minute / DAY + 1);
    return day.name().charAt(0)
        + day.name().substring(1).toLowerCase(Locale.ROOT)
        + " "
        + LocalTime.ofSecondOfDay(minute % DAY * 60L);
  }
}
