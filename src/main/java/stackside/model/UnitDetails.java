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
 * @param patients lightest first or last, as the author likes
 * @param signatures who signs what
 * @param words the unit's own word for a thing with several names
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
    @AtLeastOne List<PatientGroup> patients,
    @AtLeastOne List<Role> roles,
    @AtLeastOne Map<SignedKind, List<Fact<Role>>> signatures,
    @AtLeastOne Map<SignedKind, Fact<Months>> reviewAfter,
    OutputCheckPolicy outputCheck,
    Map<Term, Fact<String>> words) {
  public UnitDetails {
    locations = List.copyOf(locations);
    patients = List.copyOf(patients);
    roles = List.copyOf(roles);
    signatures = Collections.unmodifiableMap(new LinkedHashMap<>(signatures));
    reviewAfter = Collections.unmodifiableMap(new LinkedHashMap<>(reviewAfter));
    words = Collections.unmodifiableMap(new LinkedHashMap<>(words));
  }
}
