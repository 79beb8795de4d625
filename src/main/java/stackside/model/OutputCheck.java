package stackside.model;

import java.time.LocalDate;
import java.util.Optional;
import stackside.quantity.Ohms;
import stackside.quantity.Watts;
import stackside.source.Location;

/** A measured output at a test load. */
public record OutputCheck(
    Location at,
    Fact<Asset> asset,
    Fact<LocalDate> date,
    Fact<Mode> mode,
    Optional<Fact<Level>> level,
    Optional<Fact<Watts>> limit,
    Fact<Ohms> load,
    Fact<Watts> watts,
    Fact<String> method,
    Fact<Initials> initials,
    Optional<Fact<Withdrawal>> withdrawn)
    implements LoggedRecord {}
