package stackside.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stackside.model.Fact;
import stackside.model.Thing;
import stackside.quantity.Band;
import stackside.quantity.Quantity;

/**
 * The bands of one scale, each with the thing that has it, lowest first. Tells which of them
 * overlap and what lies between them.
 */
record Bands<Q extends Quantity & Comparable<Q>>(List<Entry<Q>> entries) {

  /** A thing and its band. */
  record Entry<Q extends Quantity & Comparable<Q>>(Thing thing, Fact<Band<Q>> band) {
    Optional<Q> from() {
      return band.value().from();
    }

    Optional<Q> below() {
      return band.value().below();
    }
  }

  /** Two neighbours on the scale. */
  record Pair<Q extends Quantity & Comparable<Q>>(Entry<Q> lower, Entry<Q> upper) {}

  Bands {
    List<Entry<Q>> sorted = new ArrayList<>(entries);
    sorted.sort(Comparator.comparing(Entry::from, Bands::lowestFirst));
    entries = List.copyOf(sorted);
  }

  private static <Q extends Comparable<Q>> int lowestFirst(Optional<Q> one, Optional<Q> other) {
    if (one.isEmpty() || other.isEmpty()) {
      return Boolean.compare(one.isPresent(), other.isPresent());
    }
    return one.orElseThrow().compareTo(other.orElseThrow());
  }

  /** Each band that overlaps with a lower one, together with the first of those. */
  List<Pair<Q>> overlaps() {
    List<Pair<Q>> found = new ArrayList<>();
    for (int i = 1; i < entries.size(); i++) {
      Entry<Q> upper = entries.get(i);
      entries.subList(0, i).stream()
          .filter(lower -> lower.band().value().overlaps(upper.band().value()))
          .findFirst()
          .ifPresent(lower -> found.add(new Pair<>(lower, upper)));
    }
    return found;
  }

  /** Neighbours with something between them. */
  List<Pair<Q>> holes() {
    List<Pair<Q>> found = new ArrayList<>();
    for (int i = 1; i < entries.size(); i++) {
      Entry<Q> upper = entries.get(i);
      Entry<Q> lower = highest(entries.subList(0, i));
      if (lower.below().isPresent()
          && upper.from().isPresent()
          && lower.below().orElseThrow().compareTo(upper.from().orElseThrow()) < 0) {
        found.add(new Pair<>(lower, upper));
      }
    }
    return found;
  }

  private static <Q extends Quantity & Comparable<Q>> Entry<Q> highest(List<Entry<Q>> some) {
    Entry<Q> best = some.get(0);
    for (Entry<Q> each : some) {
      boolean open = best.below().isEmpty();
      if (!open
          && (each.below().isEmpty()
              || each.below().orElseThrow().compareTo(best.below().orElseThrow()) > 0)) {
        best = each;
      }
    }
    return best;
  }

  /** What a pair leaves out: {@code 9 mm to 10 mm}. */
  static <Q extends Quantity & Comparable<Q>> String between(Pair<Q> pair) {
    return new Band<>(pair.lower().below(), pair.upper().from()).text();
  }
}
