package stackside.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.source.Location;

/**
 * An approved answer for lesions at sites on one machine. It holds exactly one of settings, cold
 * and not approved.
 *
 * @param patients empty where it applies to all
 * @param ask whom to ask if it is not approved
 * @param alternative absent for the preferred answer
 * @param because replies to the questions of rules, by rule id
 */
public record Profile(
    Location at,
    ThingId id,
    Fact<Machine> machine,
    @AtLeastOne List<Fact<Lesion>> lesions,
    @AtLeastOne List<Fact<SiteChoice>> sites,
    Fact<Step> step,
    List<Fact<PatientGroup>> patients,
    Optional<Settings> settings,
    Optional<Fact<String>> cold,
    Optional<Fact<String>> notApproved,
    Optional<Fact<Role>> ask,
    Optional<Alternative> alternative,
    Optional<Prose> technique,
    Optional<Prose> caution,
    List<Fact<Citation>> evidence,
    Map<String, Fact<String>> because)
    implements Thing {
  public Profile {
    lesions = List.copyOf(lesions);
    sites = List.copyOf(sites);
    patients = List.copyOf(patients);
    evidence = List.copyOf(evidence);
    because = Collections.unmodifiableMap(new LinkedHashMap<>(because));

    long answers = Stream.of(settings, cold, notApproved).filter(Optional::isPresent).count();
    if (answers != 1) {
      throw new UnreadableText(
          answers == 0
              ? "the profile gives no answer"
              : "the profile gives " + answers + " answers",
          "keep exactly one of 'settings', 'cold' and 'not-approved'");
    }
  }

  /** The answer: settings, cold, or not approved. */
  public Answer answer() {
    return settings
        .<Answer>map(each -> each)
        .or(() -> cold.map(Cold::new))
        .orElseGet(() -> new NotApproved(notApproved.orElseThrow(), ask));
  }

  /** The settings of the assigned pedals, yellow first; empty where no current flows. */
  public List<PedalSetting> pedalSettings() {
    return settings.map(Settings::assigned).orElse(List.of());
  }

  /** Whether the unit has replied to a rule's question here. */
  public boolean answers(String ruleId) {
    return because.containsKey(ruleId);
  }

  /** The single sites that the profile applies to, each once, in the order written. */
  public List<Site> allSites() {
    return sites.stream().flatMap(choice -> choice.value().sites().stream()).distinct().toList();
  }

  /** Whether this is the preferred answer rather than an alternative. */
  public boolean preferred() {
    return alternative.isEmpty();
  }

  @Override
  public String title() {
    return id.slug().replace('-', ' ');
  }

  /** Hashes the id only; the full record is slow. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
