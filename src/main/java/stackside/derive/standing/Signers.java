package stackside.derive.standing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stackside.model.Fact;
import stackside.model.Role;
import stackside.model.SignedKind;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.Unit;

/**
 * Says which roles must sign a thing. The unit lists them by kind; but who signs what is itself
 * signed, by everybody who signs anything, and by each role for its own part. So a role that is
 * struck from a list is missed twice: by those who stay, and by its own signature.
 */
public final class Signers {
  private Signers() {}

  /** The roles that must sign a thing, each once. */
  public static List<Fact<Role>> of(Unit unit, SignedKind kind, Thing thing) {
    Map<ThingId, Fact<Role>> roles = new LinkedHashMap<>();
    unit.details()
        .signatures()
        .getOrDefault(kind, List.of())
        .forEach(role -> roles.putIfAbsent(role.value().id(), role));
    if (kind == SignedKind.POLICIES) {
      everybody(unit).forEach(role -> roles.putIfAbsent(role.value().id(), role));
    }
    if (thing instanceof Role role && (signs(unit, role) || hasSigned(unit, role))) {
      roles.putIfAbsent(role.id(), new Fact<>(role, role.at()));
    }
    return List.copyOf(roles.values());
  }

  /** Whoever signs anything at all, in the order of the lists. */
  private static List<Fact<Role>> everybody(Unit unit) {
    return unit.details().signatures().values().stream().flatMap(List::stream).toList();
  }

  private static boolean signs(Unit unit, Role role) {
    return everybody(unit).stream().anyMatch(each -> each.value().id().equals(role.id()));
  }

  /** A role that no list names any more still has to agree to that. */
  private static boolean hasSigned(Unit unit, Role role) {
    return unit.signatures().stream()
        .anyMatch(signature -> signature.role().value().id().equals(role.id()));
  }
}
