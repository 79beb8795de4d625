package stackside.model;

import java.net.URI;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
 * @param words the unit's own words for things with several names
 * @param verbs verbs that a step on a card may start with, in addition to those that the program
 *     knows, because a unit writes in its own language
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
    Map<Term, Fact<String>> words,
    List<Fact<String>> verbs) {
  public UnitDetails {
    locations = List.copyOf(locations);
    makeSafe = List.copyOf(makeSafe);
    patients = List.copyOf(patients);
    roles = List.copyOf(roles);
    signatures = Collections.unmodifiableMap(new LinkedHashMap<>(signatures));
    reviewAfter = Collections.unmodifiableMap(new LinkedHashMap<>(reviewAfter));
    words = Collections.unmodifiableMap(new LinkedHashMap<>(words));
    verbs = List.copyOf(verbs);
  }
}
