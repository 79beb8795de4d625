package stackside.derive.standing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import stackside.derive.output.Measured;
import stackside.derive.program.Events;
import stackside.derive.program.ProgramChecks;
import stackside.derive.signed.Approvals;
import stackside.model.Asset;
import stackside.model.EnergyKind;
import stackside.model.Fact;
import stackside.model.Mode;
import stackside.model.PedalSetting;
import stackside.model.Profile;
import stackside.model.ServiceEvent;
import stackside.model.Settings;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.quantity.Months;

/**
 * Where a unit stands on a day with what depends on the ledger and the day: signatures and review
 * dates, stored programs, output checks. What lies after the day is left out.
 *
 * @param byThing the standing of everything that the unit wants signed
 * @param gone what was signed, is not there any more, and not all have agreed to that
 */
public record Standing(
    LocalDate on,
    Map<ThingId, SignatureStanding> byThing,
    List<GoneStanding> gone,
    ProgramChecks programs,
    List<OutputCheckStanding> outputChecks) {

  public Standing {
    byThing = Collections.unmodifiableMap(new LinkedHashMap<>(byThing));
    gone = List.copyOf(gone);
    outputChecks = List.copyOf(outputChecks);
  }

  /** Works out the standing of a unit. */
  public static Standing of(Unit unit, Approvals approvals, LocalDate on) {
    Map<ThingId, SignatureStanding> signed = new LinkedHashMap<>();
    Signing signing = new Signing(unit, approvals, on);
    signing.all().forEach(each -> signed.put(each.thing().id(), each));
    return new Standing(
        on, signed, signing.gone(), ProgramChecks.onDay(unit, on), outputChecks(unit, on));
  }

  /** The same without things that only seem to be gone, for their file cannot be read. */
  public Standing unless(Predicate<ThingId> unread) {
    List<GoneStanding> known = gone.stream().filter(each -> !unread.test(each.thing())).toList();
    return new Standing(on, byThing, known, programs, outputChecks);
  }

  /** The standing of everything that the unit wants signed, by kind. */
  public List<SignatureStanding> signatures() {
    return List.copyOf(byThing.values());
  }

  /** The standing of one thing's signatures; absent for things that are not signed. */
  public Optional<SignatureStanding> signaturesOf(ThingId thing) {
    return Optional.ofNullable(byThing.get(thing));
  }

  private static List<OutputCheckStanding> outputChecks(Unit unit, LocalDate on) {
    Map<ThingId, List<Measured>> measured = new TreeMap<>();
    Measured.of(unit).stream()
        .filter(each -> !each.check().date().value().isAfter(on))
        .forEach(
            each -> measured.computeIfAbsent(assetOf(each), id -> new ArrayList<>()).add(each));
    List<OutputCheckStanding> standing = new ArrayList<>();
    for (Asset asset : unit.assets()) {
      for (Mode mode : modesInUse(unit, asset)) {
        List<Measured> own =
            measured.getOrDefault(asset.id(), List.of()).stream()
                .filter(each -> each.check().mode().value().id().equals(mode.id()))
                .toList();
        standing.add(outputCheck(unit, on, asset, mode, own));
      }
    }
    return standing;
  }

  /** Argon apart, for its output is not published by load. */
  private static List<Mode> modesInUse(Unit unit, Asset asset) {
    Map<ThingId, Mode> modes = new TreeMap<>();
    for (Profile profile : unit.profilesOn(asset.machine().value())) {
      for (PedalSetting pedal : profile.settings().map(Settings::assigned).orElse(List.of())) {
        Mode mode = pedal.mode().value();
        if (mode.kind().value() != EnergyKind.ARGON) {
          modes.put(mode.id(), mode);
        }
      }
    }
    return List.copyOf(modes.values());
  }

  private static ThingId assetOf(Measured measured) {
    return measured.check().asset().value().id();
  }

  private static OutputCheckStanding outputCheck(
      Unit unit, LocalDate on, Asset asset, Mode mode, List<Measured> own) {
    Optional<LocalDate> latest =
        own.stream().map(each -> each.check().date().value()).max(Comparator.naturalOrder());
    List<Measured> last =
        own.stream()
            .filter(each -> latest.stream().anyMatch(each.check().date().value()::equals))
            .toList();
    Optional<ServiceEvent> endedBy =
        latest.flatMap(day -> Events.of(unit, asset).until(on).endingAfter(day));
    Optional<LocalDate> dueBy = latest.map(day -> after(day, unit.details().outputCheck().every()));
    return new OutputCheckStanding(
        asset, mode, last, endedBy, dueBy, state(on, last, endedBy, dueBy));
  }

  private static LocalDate after(LocalDate day, Fact<Months> interval) {
    return day.plusMonths(Math.round(interval.value().value()));
  }

  private static OutputCheckStanding.State state(
      LocalDate on,
      List<Measured> last,
      Optional<ServiceEvent> endedBy,
      Optional<LocalDate> dueBy) {
    if (last.isEmpty()) {
      return OutputCheckStanding.State.NEVER_CHECKED;
    }
    if (endedBy.isPresent()) {
      return OutputCheckStanding.State.NO_LONGER_COUNTS;
    }
    if (last.stream().anyMatch(Standing::isOut)) {
      return OutputCheckStanding.State.OUT_OF_TOLERANCE;
    }
    return dueBy.stream().anyMatch(on::isAfter)
        ? OutputCheckStanding.State.OVERDUE
        : OutputCheckStanding.State.CHECKED;
  }

  private static boolean isOut(Measured measured) {
    return switch (measured.verdict()) {
      case TOO_LOW, TOO_HIGH -> true;
      case WITHIN, TOO_SMALL_TO_JUDGE, NOT_PUBLISHED -> false;
    };
  }
}
