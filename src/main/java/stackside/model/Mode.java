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
 * @param level absent on a machine set in watts only
 * @param powerLimit absent in a mode set by level only
 * @param ratedPower in a mode set by level only: the highest power into the rated load
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

  /** Hashes the id only; the full record is slow. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
