package stackside.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.derive.chain.Chains;
import stackside.derive.chain.Rating;
import stackside.model.Fact;
import stackside.model.Mode;
import stackside.model.PedalSetting;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.model.Settings;
import stackside.model.ThingId;
import stackside.quantity.PeakVolts;
import stackside.source.Fault;
import stackside.source.Location;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Finds modes that put more peak voltage on a chain than its weakest part is rated for. Source:
 * GOST R IEC 60601-2-2-2022, 201.7.9.2.14 b), read. Peak volts on both sides, never peak to peak.
 */
final class VoltageAboveRating implements Rule {
  private static final Fault FAULT =
      new Fault(
          "voltage-above-rating",
          Severity.ERROR,
          "a mode puts more peak voltage on a part than it is rated for");

  /** One place where a part gets more than its rating. */
  private record Excess(
      Rating rating, Profile profile, PedalSetting setting, Fact<PeakVolts> peak) {}

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    Map<ThingId, List<Excess>> byPart = new LinkedHashMap<>();
    for (Room room : analysis.unit().rooms()) {
      for (Profile profile : analysis.unit().profilesServing(room)) {
        for (Excess excess : excesses(room, profile)) {
          byPart.computeIfAbsent(excess.rating().part().id(), id -> new ArrayList<>()).add(excess);
        }
      }
    }
    return byPart.values().stream().map(VoltageAboveRating::problem).toList();
  }

  private static List<Excess> excesses(Room room, Profile profile) {
    List<Excess> found = new ArrayList<>();
    if (!profile.settings().map(Settings::belongTogether).orElse(false)) {
      return found;
    }
    for (PedalSetting setting : profile.pedalSettings()) {
      Optional<Fact<PeakVolts>> peak =
          setting
              .mode()
              .value()
              .peakVoltage()
              .flatMap(volts -> volts.at(setting.level().map(Fact::value)));
      if (peak.isPresent()) {
        ratings(room, profile.settings().orElseThrow()).stream()
            .filter(it -> it.rated().value().compareTo(peak.orElseThrow().value()) < 0)
            .forEach(it -> found.add(new Excess(it, profile, setting, peak.orElseThrow())));
      }
    }
    return found;
  }

  /** Of every chain that the room's cables allow, for nobody knows which one will be taken. */
  private static List<Rating> ratings(Room room, Settings settings) {
    return Chains.in(room)
        .between(settings.instrument().value(), settings.socket().value())
        .stream()
        .flatMap(chain -> chain.weakest().stream())
        .distinct()
        .toList();
  }

  /** Where a part is too weak for several settings, its rating is the one thing to look at. */
  private static Problem problem(List<Excess> same) {
    Excess first = same.get(0);
    List<String> settings = same.stream().map(VoltageAboveRating::words).distinct().toList();
    String part = Wording.quoted(first.rating().part());
    if (settings.size() > 1) {
      Problem problem =
          FAULT.at(
              first.rating().rated().at(),
              "%s is rated for %s, and profiles put more on it: %s"
                  .formatted(part, first.rating().rated().value(), Wording.list(settings)));
      return problem
          .note(first.setting().mode().at(), "the first of these settings")
          .help("look at what is printed on the part, then correct its rating or the profiles");
    }
    Location at = first.setting().level().map(Fact::at).orElse(first.setting().mode().at());
    return FAULT
        .at(
            at,
            "%s on %s, which is rated for %s"
                .formatted(settings.get(0), part, first.rating().rated().value()))
        .note(first.peak().at(), "where the machine's description says so")
        .note(first.rating().rated().at(), "where the rating stands")
        .help("name another level, mode, instrument or cable; peak voltage falls with the level");
  }

  private static String words(Excess excess) {
    Mode mode = excess.setting().mode().value();
    String level =
        excess.setting().level().map(it -> " at " + Wording.level(mode, it.value())).orElse("");
    return "%s%s puts %s".formatted(Wording.quoted(mode), level, excess.peak().value());
  }
}
