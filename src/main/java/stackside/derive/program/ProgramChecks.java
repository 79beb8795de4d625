package stackside.derive.program;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stackside.model.Asset;
import stackside.model.Profile;
import stackside.model.Settings;
import stackside.model.StoredProgram;
import stackside.model.ThingId;
import stackside.model.Unit;

/**
 * Compares every approved profile that has a stored program with every asset on which it is used.
 * Sorted by asset, then in content order.
 */
public record ProgramChecks(List<ProgramCheck> all) {

  public ProgramChecks {
    all = List.copyOf(all);
  }

  /** The checks as of this day. */
  public static ProgramChecks onDay(Unit unit, LocalDate day) {
    Readings readings = Readings.onDay(unit, day);
    List<ProgramCheck> all = new ArrayList<>();
    for (Asset asset : unit.assets()) {
      List<Approved> approved = approvedOn(unit, asset);
      approved.forEach(each -> all.add(check(asset, each, approved, readings)));
    }
    return new ProgramChecks(all);
  }

  private record Approved(Profile profile, Settings settings, StoredProgram program) {
    int slot() {
      return program.slot().value();
    }

    boolean isIn(SlotReading reading) {
      return Comparison.of(settings, program, reading).isEmpty();
    }
  }

  /** The profiles with a stored program that are offered by a room with this asset. */
  private static List<Approved> approvedOn(Unit unit, Asset asset) {
    Set<ThingId> offered =
        unit.roomsWith(asset).stream()
            .flatMap(room -> unit.profilesServing(room).stream())
            .map(Profile::id)
            .collect(Collectors.toSet());
    return unit.profilesOn(asset.machine().value()).stream()
        .filter(profile -> offered.contains(profile.id()))
        .flatMap(profile -> approved(profile).stream())
        .toList();
  }

  private static Optional<Approved> approved(Profile profile) {
    return profile
        .settings()
        .flatMap(
            settings ->
                settings.program().map(program -> new Approved(profile, settings, program)));
  }

  private static ProgramCheck check(
      Asset asset, Approved approved, List<Approved> others, Readings readings) {
    Optional<SlotReading> reading = readings.of(asset, approved.slot());
    List<Mismatch> mismatches =
        reading
            .filter(SlotReading::counts)
            .map(read -> Comparison.of(approved.settings(), approved.program(), read))
            .orElse(List.of());
    Optional<Integer> swapped =
        mismatches.isEmpty()
            ? Optional.empty()
            : reading.flatMap(read -> swapped(asset, approved, read, others, readings));
    return new ProgramCheck(
        asset,
        approved.profile(),
        approved.settings(),
        approved.program(),
        reading,
        mismatches,
        swapped);
  }

  /**
   * The slot whose program was swapped with this one: each holds what is approved for the other.
   */
  private static Optional<Integer> swapped(
      Asset asset, Approved here, SlotReading readHere, List<Approved> others, Readings readings) {
    return others.stream()
        .filter(there -> there.slot() != here.slot() && there.isIn(readHere))
        .filter(
            there ->
                readings.of(asset, there.slot()).stream()
                    .anyMatch(readThere -> readThere.counts() && here.isIn(readThere)))
        .map(Approved::slot)
        .findFirst();
  }

  /** The checks of one asset. */
  public List<ProgramCheck> of(Asset asset) {
    return all.stream().filter(check -> check.asset().id().equals(asset.id())).toList();
  }
}
