package stackside.model;

import java.net.URI;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stackside.quantity.Months;
import stackside.source.Location;

/**
 * What {@code unit.yaml} says of the unit as a whole.
 *
 * @param format the version of the content's form; the reader refuses one that it does not know
 * @param language a BCP 47 tag
 * @param address where the site will be served; codes on cards lead there
 * @param makeSafe what to do first whatever is wrong, line by line: the same on every card
 * @param patients lightest first or last, as the author likes
 * @param signatures who signs what
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
