package stackside.derive.standing;

import java.util.List;
import java.util.Optional;
import stackside.derive.signed.Json;
import stackside.model.Role;
import stackside.model.SignedKind;
import stackside.model.ThingId;

/**
 * A signed thing that the content has no more, and that some role has not agreed to do without.
 *
 * @param facts what it said when it was last signed, if that was kept
 * @param missing the roles whose latest decision is not that it be gone
 */
public record GoneStanding(
    ThingId thing, SignedKind kind, Optional<Json.Members> facts, List<Role> missing) {
  public GoneStanding {
    missing = List.copyOf(missing);
  }
}
