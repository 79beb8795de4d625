package stackside.content;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stackside.model.Broken;
import stackside.model.Kind;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.source.Location;
import stackside.source.Problem;

/** Everything with an id that was read so far, whole or broken, found by its id. */
final class SymbolTable {
  private final Map<ThingId, Thing> things = new HashMap<>();
  private final List<ThingId> order = new ArrayList<>();
  private final Set<Kind> incomplete = EnumSet.noneOf(Kind.class);

  Optional<Thing> find(ThingId id) {
    return Optional.ofNullable(things.get(id));
  }

  /** Adds a thing, or puts it in the place of what had its id. */
  void put(Thing thing) {
    if (things.put(thing.id(), thing) == null) {
      order.add(thing.id());
    }
  }

  void putBroken(ThingId id, Location at, List<Problem> problems) {
    put(new Broken(id, at, problems));
  }

  /** How many things were read so far. {@link #breakSince} takes this number later. */
  int mark() {
    return order.size();
  }

  /** What belongs to a broken thing, and was read after a mark, is broken with it. */
  void breakSince(int mark) {
    for (ThingId id : order.subList(mark, order.size())) {
      Thing thing = find(id).orElseThrow();
      if (!(thing instanceof Broken)) {
        putBroken(id, thing.at(), List.of());
      }
    }
  }

  /**
   * Notes that something of this kind has no id. From now on nobody can say that a thing of this
   * kind is missing.
   */
  void markIncomplete(Kind kind) {
    incomplete.add(kind);
  }

  boolean isIncomplete(Kind kind) {
    return incomplete.contains(kind);
  }

  /** The whole things of a kind in the order read. */
  <T extends Thing> List<T> whole(Kind kind, Class<T> type) {
    return order.stream()
        .filter(id -> id.kind() == kind)
        .map(things::get)
        .filter(type::isInstance)
        .map(type::cast)
        .toList();
  }

  List<Broken> broken() {
    return order.stream()
        .map(things::get)
        .filter(Broken.class::isInstance)
        .map(Broken.class::cast)
        .sorted(Comparator.comparing(Broken::at).thenComparing(Broken::id))
        .toList();
  }

  /** The ids of some kinds, without their owner; only of one owner where an owner is given. */
  List<String> names(Collection<Kind> kinds, Optional<ThingId> owner) {
    String prefix = owner.map(each -> each.slug() + "/").orElse("");
    return order.stream()
        .filter(id -> kinds.contains(id.kind()) && id.slug().startsWith(prefix))
        .map(id -> id.slug().substring(prefix.length()))
        .toList();
  }
}
