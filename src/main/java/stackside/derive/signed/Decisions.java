package stackside.derive.signed;

import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import stackside.model.Kind;
import stackside.model.SignedKind;
import stackside.model.ThingId;

/**
 * What counts of a ledger on a day: of every role the latest decision about every thing, and none
 * that it decided before.
 */
public final class Decisions {
  private static final ThingId POLICIES = new ThingId(Kind.UNIT, "policies");

  private final Approvals approvals;
  private final Map<ThingId, Map<String, Ledger.Decision>> latest = new LinkedHashMap<>();
  private Optional<Json.Members> policies = Optional.empty();

  Decisions(Approvals approvals, LocalDate on) {
    this.approvals = approvals;
    approvals.ledger().decisions(on).forEach(this::count);
  }

  private void count(Ledger.Decision decision) {
    Map<String, Ledger.Decision> byRole =
        latest.computeIfAbsent(decision.thing(), any -> new LinkedHashMap<>());
    byRole.remove(decision.role()); // the last one stands last
    byRole.put(decision.role(), decision);
    if (decision.thing().equals(POLICIES)) {
      approvals.factsUnder(decision).filter(this::allAgree).ifPresent(this::putInForce);
    }
  }

  private void putInForce(Json.Members facts) {
    policies = Optional.of(facts);
  }

  /** A change of policies wants those who signed under the old ones and those who will. */
  private boolean allAgree(Json.Members facts) {
    Set<String> roles = new TreeSet<>(everybody(facts));
    policies.map(Decisions::everybody).ifPresent(roles::addAll);
    return roles.stream()
        .allMatch(
            role ->
                about(POLICIES, role)
                    .flatMap(approvals::factsUnder)
                    .filter(facts::equals)
                    .isPresent());
  }

  private static Set<String> everybody(Json.Members policies) {
    Set<String> roles = new TreeSet<>();
    signatures(policies).values().forEach(roles::addAll);
    return roles;
  }

  private static SortedMap<String, List<String>> signatures(Json.Members policies) {
    SortedMap<String, List<String>> byKind = new TreeMap<>();
    if (policies.member("signatures").orElse(Json.text("")) instanceof Json.Members kinds) {
      kinds.values().forEach((kind, roles) -> byKind.put(kind, texts(roles)));
    }
    return byKind;
  }

  private static List<String> texts(Json list) {
    return list instanceof Json.Items items
        ? items.values().stream()
            .filter(Json.Text.class::isInstance)
            .map(text -> ((Json.Text) text).value())
            .toList()
        : List.of();
  }

  /** The policies that all who had to agree agreed to last; absent before the first. */
  public Optional<Json.Members> policies() {
    return policies;
  }

  /** Which roles sign this kind of thing, as the policies in force say; absent before the first. */
  public Optional<List<String>> signers(SignedKind kind) {
    return policies.map(
        facts ->
            kind == SignedKind.POLICIES
                ? List.copyOf(everybody(facts))
                : signatures(facts).getOrDefault(kind.word(), List.of()));
  }

  /** Whether one person may sign in two roles, as the policies in force say. */
  public Optional<Boolean> allowsTwoRoles() {
    return policies.map(
        facts ->
            facts.member("one-person-two-roles").filter(new Json.Flag(true)::equals).isPresent());
  }

  /** The role that lifts, as the policies in force say. */
  public Optional<String> lifts() {
    return policies.flatMap(facts -> facts.member("lifts")).stream()
        .flatMap(roles -> texts(roles).stream())
        .findFirst();
  }

  /** The latest decision of a role about a thing. */
  public Optional<Ledger.Decision> about(ThingId thing, String role) {
    return Optional.ofNullable(latest.getOrDefault(thing, Map.of()).get(role));
  }

  /** The latest decision about a thing, in whatever role. */
  public Optional<Ledger.Decision> about(ThingId thing) {
    return latest.getOrDefault(thing, Map.of()).values().stream().reduce((earlier, later) -> later);
  }

  /** All decisions that count. */
  public List<Ledger.Decision> all() {
    return latest.values().stream().map(Map::values).flatMap(Collection::stream).toList();
  }

  /** The things that some role wants to be there, as far as anybody decided about them. */
  public Set<ThingId> wanted() {
    Set<ThingId> wanted = new TreeSet<>();
    all().stream()
        .filter(each -> each.facts().isPresent())
        .forEach(each -> wanted.add(each.thing()));
    return wanted;
  }

  /** What changed in a thing since a role last decided about it; absent if none ever did. */
  public Optional<SinceSigned> sinceSigned(SignedFacts now) {
    return about(now.thing())
        .flatMap(
            decision ->
                approvals
                    .factsUnder(decision)
                    .map(
                        facts ->
                            new SinceSigned(decision, FactChange.between(facts, now.facts()))));
  }

  /** The last decision about a thing, and what changed since. */
  public record SinceSigned(Ledger.Decision decision, List<FactChange> changes) {
    public SinceSigned {
      changes = List.copyOf(changes);
    }
  }
}
