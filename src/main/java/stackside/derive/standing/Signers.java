package stackside.derive.standing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stackside.derive.signed.Decisions;
import stackside.model.Fact;
import stackside.model.Kind;
import stackside.model.Role;
import stackside.model.SignedKind;
import stackside.model.ThingId;
import stackside.model.Unit;

/**
 * Says which roles must sign a thing: those that the policies in force name, whatever somebody has
 * written into {@code unit.yaml} since. A change of the policies wants those who sign under the old
 * ones and those who will under the new.
 */
public final class Signers {
  private final Unit unit;
  private final Decisions decisions;

  public Signers(Unit unit, Decisions decisions) {
    this.unit = unit;
    this.decisions = decisions;
  }

  /** The roles that must sign things of a kind, each once. */
  public List<Role> of(SignedKind kind) {
    Set<String> ids = new LinkedHashSet<>();
    List<String> inForce = decisions.signers(kind).orElse(List.of());
    if (kind == SignedKind.POLICIES) {
      everybody().forEach(ids::add);
      ids.addAll(inForce);
    } else if (inForce.isEmpty()) {
      unit.details().signatures().getOrDefault(kind, List.of()).forEach(role -> ids.add(id(role)));
    } else {
      ids.addAll(inForce);
    }
    return ids.stream().map(this::role).toList();
  }

  /** Whoever signs anything at all, as it is written now, in the order of the lists. */
  private List<String> everybody() {
    List<String> ids = new ArrayList<>();
    unit.details().signatures().values().forEach(roles -> roles.forEach(r -> ids.add(id(r))));
    return ids;
  }

  private static String id(Fact<Role> role) {
    return role.value().id().slug();
  }

  /** A role that was struck from the list still has to be asked, under its id. */
  private Role role(String slug) {
    Optional<Role> known =
        unit.details().roles().stream().filter(role -> role.id().slug().equals(slug)).findFirst();
    return known.orElseGet(
        () ->
            new Role(
                unit.details().at(),
                new ThingId(Kind.ROLE, slug),
                new Fact<>(slug, unit.details().at())));
  }
}
