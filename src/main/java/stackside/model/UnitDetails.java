package stackside.model;

import java.net.URI;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stackside.quantity.Months;
import stackside.source.Location;

/**
 * What {@code unit.yaml} says about the unit as a whole.
 *
 * @param format the version of the content format; the reader refuses an unknown version
 * @param language a BCP 47 tag
 * @param address where the site will be served; codes on cards point there
 * @param makeSafe what to do first whatever is wrong, line by line; the same on every card
 * @param patients lightest first or last, as the author prefers
 * @param signatures who signs what
 * @param stopOrWarn what is done where a record or a day raises an alarm
 * @param lifts the role that says that what was out of use may be used again
 * @param onePersonTwoRoles whether one person may sign in two roles
 * @param words the unit's own word for a thing with several names
 * @param verbs what a step on a card may begin with, besides the verbs that the program knows: a
 *     unit writes in its own language
 */
public record UnitDetails(
    Location at,
    Fact<Integer> format,
    Fact<String> name,
    Fact<UnitStatus> status,
    Fact<String> language,
    Fact<URI> address,
    @AtLeastOne List<Premises> locations,
    ReadingDistance readingDistance,
    List<Fact<String>> makeSafe,
    @AtLeastOne List<PatientGroup> patients,
    @AtLeastOne List<Role> roles,
    @AtLeastOne Map<SignedKind, List<Fact<Role>>> signatures,
    @AtLeastOne Map<SignedKind, Fact<Months>> reviewAfter,
    OutputCheckPolicy outputCheck,
    Map<Alarm, Fact<AlarmAnswer>> stopOrWarn,
    Optional<Fact<Role>> lifts,
    Optional<Fact<Boolean>> onePersonTwoRoles,
    Map<Term, Fact<String>> words,
    List<Fact<String>> verbs) {
  public UnitDetails {
    locations = List.copyOf(locations);
    makeSafe = List.copyOf(makeSafe);
    patients = List.copyOf(patients);
    roles = List.copyOf(roles);
    signatures = Collections.unmodifiableMap(new LinkedHashMap<>(signatures));
    reviewAfter = Collections.unmodifiableMap(new LinkedHashMap<>(reviewAfter));
    stopOrWarn = Collections.unmodifiableMap(new LinkedHashMap<>(stopOrWarn));
    words = Collections.unmodifiableMap(new LinkedHashMap<>(words));
    verbs = List.copyOf(verbs);
  }

  /** What an alarm brings; what shows harm stops, unless the unit chose otherwise. */
  public AlarmAnswer answer(Alarm alarm) {
    Fact<AlarmAnswer> chosen = stopOrWarn.get(alarm);
    if (chosen != null) {
      return chosen.value();
    }
    return switch (alarm) {
      case PROGRAM_DIFFERS, OUTPUT_OUT_OF_TOLERANCE -> AlarmAnswer.STOP;
      case CHECK_OVERDUE, REVIEW_OVERDUE -> AlarmAnswer.WARN;
    };
  }
}
