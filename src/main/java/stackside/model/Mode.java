package stackside.model;

import java.util.List;
import java.util.Optional;
import stackside.quantity.Amperes;
import stackside.quantity.Ohms;
import stackside.quantity.PeakVolts;
import stackside.quantity.PowerRange;
import stackside.quantity.Watts;
import stackside.source.Location;

/**
 * One output mode of a machine.
 *
 * @param name exactly as the display shows it
 * @param level absent on a machine set by watts alone
 * @param powerLimit absent in a mode set by level alone
 * @param ratedPower in a mode set by level alone: most power into the rated load
 * @param currentLimit root mean square, while current flows
 * @param crestFactor within the burst for a pulsed waveform, over the cycle otherwise
 */
public record Mode(
    Location at,
    ThingId id,
    Fact<String> name,
    Fact<PedalAction> pedal,
    Fact<EnergyKind> kind,
    Fact<CurrentType> current,
    Fact<Waveform> waveform,
    Optional<LevelScale> level,
    Optional<Fact<PowerRange>> powerLimit,
    Optional<ByLevel<Watts>> ratedPower,
    Optional<Fact<Ohms>> ratedLoad,
    Optional<ByLevel<Amperes>> currentLimit,
    Optional<PulseTiming> pulse,
    Optional<ByLevel<PeakVolts>> peakVoltage,
    Optional<ByLevel<CrestFactor>> crestFactor,
    List<PublishedOutput> published)
    implements Thing {
  public Mode {
    published = List.copyOf(published);
  }

  @Override
  public String title() {
    return name.value();
  }

  /** By the id alone; hashing all that hangs on a thing would cost more than any lookup. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
