package stackside.model;

import java.time.LocalDate;
import java.util.Optional;
import stackside.source.Location;

/** Something that happened to an asset and makes earlier readings and checks invalid. */
public record ServiceEvent(
    Location at,
    Fact<Asset> asset,
    Fact<LocalDate> date,
    Fact<ServiceEventKind> event,
    Optional<Fact<String>> softwareAfter,
    Optional<Fact<String>> note,
    Optional<Fact<Withdrawal>> withdrawn)
    implements LoggedRecord {}
