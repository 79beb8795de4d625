package stackside.model;

import java.time.LocalDate;
import java.util.Optional;
import stackside.source.Location;

/**
 * What was read, measured or done on a generator on a day. Such records are added and never
 * changed; one that is wrong is withdrawn.
 */
public sealed interface LoggedRecord permits ProgramReading, ServiceEvent, OutputCheck {
  Location at();

  Fact<Asset> asset();

  Fact<LocalDate> date();

  Optional<Fact<Withdrawal>> withdrawn();
}
