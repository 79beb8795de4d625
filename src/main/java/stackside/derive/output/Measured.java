package stackside.derive.output;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.model.Asset;
import stackside.model.Fact;
import stackside.model.Level;
import stackside.model.Mode;
import stackside.model.OutputCheck;
import stackside.model.OutputCheckPolicy;
import stackside.model.Unit;
import stackside.quantity.PowerRange;
import stackside.quantity.Watts;

/**
 * Compares a measured output with the output expected at that test load, never with the dial. A
 * soft mode limited by its voltage is right to deliver less than its set limit.
 *
 * @param expected within the burst if the mode is pulsed; absent if it is not published
 */
public record Measured(
    OutputCheck check,
    Optional<ModeOutput> output,
    Optional<Watts> expected,
    Band tolerated,
    Verdict verdict) {

  /** The acceptable range of the measured power. */
  public record Band(Watts from, Watts to) {}

  /** The result of the comparison. */
  public enum Verdict {
    WITHIN,
    TOO_LOW,
    TOO_HIGH,
    /** The expected output is below the share of rated power from which the unit judges. */
    TOO_SMALL_TO_JUDGE,
    /** The output at this load is not published. */
    NOT_PUBLISHED
  }

  /** All output checks of a unit, in file order. */
  public static List<Measured> of(Unit unit) {
    return unit.outputChecks().stream()
        .map(check -> of(check, unit.details().outputCheck()))
        .toList();
  }

  static Measured of(OutputCheck check, OutputCheckPolicy policy) {
    Asset asset = check.asset().value();
    ModeSetting setting =
        new ModeSetting(
            check.mode().value(), check.level().map(Fact::value), check.limit().map(Fact::value));
    Optional<ModeOutput> output = ModeOutput.of(asset.machine().value(), setting);
    Optional<Watts> expected = output.flatMap(known -> known.curve().power(check.load().value()));
    Band band = band(expected.orElse(new Watts(0)), policy);
    Verdict verdict =
        expected.map(watts -> verdict(check, watts, band, policy)).orElse(Verdict.NOT_PUBLISHED);
    return new Measured(check, output, expected, band, verdict);
  }

  private static Band band(Watts expected, OutputCheckPolicy policy) {
    double part = expected.value() * policy.tolerance().value().value() / 100;
    return new Band(new Watts(expected.value() - part), new Watts(expected.value() + part));
  }

  private static Verdict verdict(
      OutputCheck check, Watts expected, Band band, OutputCheckPolicy policy) {
    double share = policy.above().value().share().value() / 100;
    boolean small =
        rated(check.mode().value()).stream()
            .anyMatch(rated -> expected.value() < share * rated.value());
    if (small) {
      return Verdict.TOO_SMALL_TO_JUDGE;
    }
    Watts watts = check.watts().value();
    if (watts.compareTo(band.from()) < 0) {
      return Verdict.TOO_LOW;
    }
    return watts.compareTo(band.to()) > 0 ? Verdict.TOO_HIGH : Verdict.WITHIN;
  }

  /**
   * A mode's rated power: the highest limit that can be set, or the highest rating of its levels.
   */
  static Optional<Watts> rated(Mode mode) {
    Optional<Watts> highest = mode.powerLimit().map(Fact::value).map(PowerRange::to);
    return highest.or(
        () ->
            levels(mode)
                .flatMap(
                    level ->
                        mode
                            .ratedPower()
                            .flatMap(rated -> rated.at(level))
                            .map(Fact::value)
                            .stream())
                .max(Comparator.naturalOrder()));
  }

  private static Stream<Optional<Level>> levels(Mode mode) {
    return mode.level().isEmpty()
        ? Stream.of(Optional.empty())
        : mode.level().get().levels().stream().map(Optional::of);
  }
}
