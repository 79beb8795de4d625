package stackside.derive.standing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stackside.derive.signed.Approvals;
import stackside.derive.signed.Decisions;
import stackside.derive.signed.Fingerprint;
import stackside.derive.signed.Ledger;
import stackside.derive.signed.SignedFacts;
import stackside.model.Fact;
import stackside.model.Kind;
import stackside.model.Role;
import stackside.model.SignedKind;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.quantity.Months;

/** Reads the ledger for everything that a unit wants signed. */
final class Signing {
  private final Unit unit;
  private final LocalDate on;
  private final Approvals approvals;
  private final Decisions decisions;
  private final Signers signers;

  Signing(Unit unit, Approvals approvals, LocalDate on) {
    this.unit = unit;
    this.on = on;
    this.approvals = approvals;
    this.decisions = approvals.on(on);
    this.signers = new Signers(unit, decisions);
  }

  List<SignatureStanding> all() {
    List<SignatureStanding> all = new ArrayList<>();
    for (SignedKind kind : SignedKind.values()) {
      List<Role> roles = signers.of(kind);
      things(unit, kind).forEach(thing -> all.add(standing(kind, thing, roles)));
    }
    return all;
  }

  /** What is signed, by kind. */
  private static List<? extends Thing> things(Unit unit, SignedKind kind) {
    return switch (kind) {
      case PROFILE -> unit.profiles();
      case MACHINE -> unit.machines();
      case DRILL -> unit.drills();
      case CHECKLIST -> unit.checklists();
      case ROOM -> unit.rooms();
      case ASSET -> unit.assets();
      case SOURCES -> List.of(unit.sources());
      case POLICIES -> List.of(unit.policies());
    };
  }

  private SignatureStanding standing(SignedKind kind, Thing thing, List<Role> roles) {
    Fingerprint today = SignedFacts.of(unit, thing).orElseThrow().fingerprint();
    List<SignatureStanding.Wanted> wanted =
        roles.stream().map(role -> wanted(thing, role, today)).toList();
    Optional<LocalDate> reviewBy = reviewBy(kind, wanted);
    return new SignatureStanding(thing, kind, wanted, reviewBy, state(wanted, reviewBy));
  }

  private SignatureStanding.Wanted wanted(Thing thing, Role role, Fingerprint today) {
    Optional<Ledger.Decision> last = decisions.about(thing.id(), role.id().slug());
    Optional<Ledger.Decision> given =
        last.filter(decision -> decision.facts().filter(today::equals).isPresent());
    return new SignatureStanding.Wanted(role, given, given.isPresent() ? Optional.empty() : last);
  }

  /** The interval runs from the oldest of the signatures that count. */
  private Optional<LocalDate> reviewBy(SignedKind kind, List<SignatureStanding.Wanted> wanted) {
    if (wanted.stream().anyMatch(each -> each.given().isEmpty())) {
      return Optional.empty();
    }
    Optional<Fact<Months>> interval = Optional.ofNullable(unit.details().reviewAfter().get(kind));
    return wanted.stream()
        .flatMap(each -> each.given().stream())
        .map(Ledger.Decision::day)
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

  /** A thing that cannot be read may still be there; only where all of its kind can, is it gone. */
  List<GoneStanding> gone() {
    List<GoneStanding> gone = new ArrayList<>();
    for (ThingId thing : decisions.wanted()) {
      kind(thing.kind())
          .filter(kind -> unit.find(thing).isEmpty() && !unit.anyBroken(thing.kind()))
          .map(kind -> gone(thing, kind))
          .filter(each -> !each.missing().isEmpty())
          .ifPresent(gone::add);
    }
    return gone;
  }

  private GoneStanding gone(ThingId thing, SignedKind kind) {
    List<Role> missing =
        signers.of(kind).stream()
            .filter(
                role ->
                    decisions
                        .about(thing, role.id().slug())
                        .filter(each -> each.facts().isEmpty())
                        .isEmpty())
            .toList();
    return new GoneStanding(
        thing, kind, decisions.about(thing).flatMap(approvals::factsUnder), missing);
  }

  private static Optional<SignedKind> kind(Kind kind) {
    return Arrays.stream(SignedKind.values())
        .filter(each -> each.word().equals(kind.word()))
        .findFirst();
  }
}
