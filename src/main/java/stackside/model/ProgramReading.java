package stackside.model;

import java.time.LocalDate;
import java.util.Optional;
import stackside.quantity.Watts;
import stackside.source.Location;

/**
 * What one asset showed on a given date for one pedal of a stored program.
 *
 * @param mode absent where the pedal was unassigned
 */
public record ProgramReading(
    Location at,
    Fact<Asset> asset,
    Fact<LocalDate> date,
    Fact<Integer> slot,
    Fact<String> shownAs,
    Fact<Socket> socket,
    Fact<PedalColour> pedal,
    Optional<Fact<Mode>> mode,
    Optional<Fact<Level>> level,
    Optional<Fact<Watts>> limit,
    Fact<Initials> initials,
    Optional<Fact<Withdrawal>> withdrawn)
    implements LoggedRecord {}
