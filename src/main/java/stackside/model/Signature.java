package stackside.model;

import java.time.LocalDate;
import stackside.source.Location;

/** One line of the ledger of approvals. */
public record Signature(
    Location at,
    Fact<LocalDate> date,
    Fact<ThingId> thing,
    Fact<String> fingerprint,
    Fact<Role> role,
    Fact<Initials> initials,
    Fact<String> seal) {}
