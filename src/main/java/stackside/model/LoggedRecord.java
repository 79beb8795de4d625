package stackside.model;

import java.time.LocalDate;
import java.util.Optional;
import stackside.source.Location;

/**
 * What was read, measured or done on a generator on a given day. Records are added and never
 * changed; a wrong one is withdrawn.
 */
public sealed interface LoggedRecord permits ProgramReading, ServiceEvent, OutputCheck {
  Location at();

  Fact<Asset> asset();

  Fact<LocalDate> date();

  Optional<Fact<Withdrawal>> withdrawn();
}
