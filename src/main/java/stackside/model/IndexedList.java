package stackside.model;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.RandomAccess;
import java.util.function.Function;

/**
 * A list that cannot be changed and that knows which of its members have to do with a thing, so
 * that nobody searches all of it. A thing has to do with itself.
 */
final class IndexedList<T> extends AbstractList<T> implements RandomAccess {
  private final List<T> members;
  private final Map<ThingId, List<Integer>> places = new LinkedHashMap<>();

  private IndexedList(List<T> members) {
    this.members = List.copyOf(members);
  }

  /** A copy of a list of things, each of which has to do with itself alone. */
  static <T extends Thing> IndexedList<T> toThemselves(List<T> members) {
    return to(members, each -> List.of());
  }

  /** A copy of a list, with the things that each member has to do with besides itself. */
  static <T> IndexedList<T> to(List<T> members, Function<T, Collection<ThingId>> things) {
    IndexedList<T> related = new IndexedList<>(members);
    for (int place = 0; place < members.size(); place++) {
      T member = members.get(place);
      if (member instanceof Thing thing) {
        related.add(thing.id(), place);
      }
      for (ThingId other : things.apply(member)) {
        related.add(other, place);
      }
    }
    return related;
  }

  private void add(ThingId thing, int place) {
    places.computeIfAbsent(thing, id -> new ArrayList<>(1)).add(place);
  }

  /**
   * Those members of a list that have to do with any of some things, in order, each once. A plain
   * list knows nothing of that.
   */
  static <T> List<T> of(List<T> list, Collection<ThingId> things) {
    if (list instanceof IndexedList<T> related) {
      return related.of(things);
    }
    throw new IllegalArgumentException("a list that does not know what its members belong to");
  }

  private List<T> of(Collection<ThingId> things) {
    return things.stream()
        .flatMap(thing -> places.getOrDefault(thing, List.of()).stream())
        .sorted()
        .distinct()
        .map(members::get)
        .toList();
  }

  @Override
  public T get(int place) {
    return members.get(place);
  }

  @Override
  public int size() {
    return members.size();
  }
}
