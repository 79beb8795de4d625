package stackside.derive.standing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stackside.model.Fact;
import stackside.model.Role;
import stackside.model.Signature;
import stackside.model.SignedKind;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.quantity.Months;

/** Reads the ledger for everything that a unit wants signed. */
final class Signing {
  private final Unit unit;
  private final LocalDate on;
  private final Fingerprints fingerprints;
  private final Map<ThingId, List<Signature>> given;

  private Signing(Unit unit, LocalDate on, Fingerprints fingerprints) {
    this.unit = unit;
    this.on = on;
    this.fingerprints = fingerprints;
    this.given =
        unit.signatures().stream()
            .collect(Collectors.groupingBy(signature -> signature.thing().value()));
  }

  static List<SignatureStanding> of(Unit unit, LocalDate on, Fingerprints fingerprints) {
    Signing signing = new Signing(unit, on, fingerprints);
    List<SignatureStanding> all = new ArrayList<>();
    for (SignedKind kind : SignedKind.values()) {
      things(unit, kind).stream()
          .filter(thing -> kind != SignedKind.ROLE || !Signers.of(unit, kind, thing).isEmpty())
          .forEach(thing -> all.add(signing.standing(kind, thing)));
    }
    return all;
  }

  /** What is signed, by kind. */
  static List<? extends Thing> things(Unit unit, SignedKind kind) {
    return switch (kind) {
      case PROFILE -> unit.profiles();
      case MACHINE -> unit.machines();
      case DRILL -> unit.drills();
      case CHECKLIST -> unit.checklists();
      case ROOM -> unit.rooms();
      case ASSET -> unit.assets();
      case SOURCES -> List.of(unit.sources());
      case POLICIES -> List.of(unit.policies());
      case ROLE -> unit.details().roles();
    };
  }

  private SignatureStanding standing(SignedKind kind, Thing thing) {
    String today = fingerprints.of(thing);
    List<Fact<Role>> roles = Signers.of(unit, kind, thing);
    List<SignatureStanding.Wanted> wanted =
        roles.stream().map(role -> wanted(thing, role, today)).toList();
    Optional<LocalDate> reviewBy = reviewBy(kind, wanted);
    return new SignatureStanding(thing, kind, wanted, reviewBy, state(wanted, reviewBy));
  }

  private SignatureStanding.Wanted wanted(Thing thing, Fact<Role> role, String today) {
    List<Signature> own =
        given.getOrDefault(thing.id(), List.of()).stream()
            .filter(signature -> signature.role().value().id().equals(role.value().id()))
            .filter(signature -> !signature.date().value().isAfter(on))
            .sorted(Comparator.comparing(signature -> signature.date().value()))
            .toList();
    Optional<Signature> given =
        own.stream()
            .filter(signature -> signature.fingerprint().value().equals(today))
            .reduce((earlier, later) -> later);
    Optional<Signature> outdated =
        given.isPresent() ? Optional.empty() : own.stream().reduce((earlier, later) -> later);
    return new SignatureStanding.Wanted(role, given, outdated);
  }

  /** The interval runs from the oldest of the signatures that count. */
  private Optional<LocalDate> reviewBy(SignedKind kind, List<SignatureStanding.Wanted> wanted) {
    if (wanted.stream().anyMatch(each -> each.given().isEmpty())) {
      return Optional.empty();
    }
    Optional<Fact<Months>> interval = Optional.ofNullable(unit.details().reviewAfter().get(kind));
    return wanted.stream()
        .flatMap(each -> each.given().stream())
        .map(signature -> signature.date().value())
        .min(Comparator.naturalOrder())
        .flatMap(
            oldest ->
                interval.map(months -> oldest.plusMonths(Math.round(months.value().value()))));
  }

  private SignatureStanding.State state(
      List<SignatureStanding.Wanted> wanted, Optional<LocalDate> reviewBy) {
    boolean neverSigned =
        wanted.stream().anyMatch(each -> each.given().isEmpty() && each.outdated().isEmpty());
    if (neverSigned) {
      return SignatureStanding.State.UNSIGNED;
    }
    if (wanted.stream().anyMatch(each -> each.given().isEmpty())) {
      return SignatureStanding.State.CHANGED_SINCE;
    }
    return reviewBy.stream().anyMatch(on::isAfter)
        ? SignatureStanding.State.REVIEW_OVERDUE
        : SignatureStanding.State.SIGNED;
  }
}
