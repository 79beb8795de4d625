package stackside.derive.chain;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.model.Accessory;
import stackside.model.Cable;
import stackside.model.ConnectorId;
import stackside.model.Electrode;
import stackside.model.PatientPart;
import stackside.model.Instrument;

/**
 * An instrument or neutral electrode, with the cables and adaptors between it and a socket.
 *
 * @param end what touches the patient
 * @param cables from the patient's end to the machine's; empty if it plugs in directly
 * @param plug what goes into the socket
 */
public record Chain(PatientPart end, List<Cable> cables, ConnectorId plug) {

  public Chain {
    cables = List.copyOf(cables);
  }

  /** The parts from the machine's end to the patient's. */
  public List<Accessory> parts() {
    Stream.Builder<Accessory> parts = Stream.builder();
    for (int i = cables.size() - 1; i >= 0; i--) {
      parts.add(cables.get(i));
    }
    return parts.add(end).build().toList();
  }

  /** The ratings of all rated parts, from the machine's end. */
  public List<Rating> ratings() {
    return parts().stream().flatMap(part -> rating(part).stream()).toList();
  }

  /** The lowest rating of the chain; of several equal ones, the nearest to the machine. */
  public Optional<Rating> weakest() {
    return ratings().stream().min(Comparator.comparing(rating -> rating.rated().value()));
  }

  private static Optional<Rating> rating(Accessory part) {
    if (part instanceof Cable cable) {
      return Optional.of(new Rating(cable, cable.ratedVoltage()));
    }
    if (part instanceof Instrument instrument) {
      return Optional.of(new Rating(instrument, instrument.ratedVoltage()));
    }
    if (part instanceof Electrode) {
      return Optional.empty();
    }
    throw new IllegalStateException("nobody knows the rating of " + part);
  }
}
