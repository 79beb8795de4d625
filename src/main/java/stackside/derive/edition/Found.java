package stackside.derive.edition;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What an issue has to decide about.
 *
 * @param candidates the cards that the content makes
 * @param inUse the numbers of the generators that may be used; absent where their list cannot be
 *     read
 * @param bad what a record shows that the unit wants stopped, by the number of the generator
 * @param waiting what keeps a room or a generator as it was, by {@code room:ID} or {@code asset:ID}
 * @param uncertain why a card that the content does not make any more need not be gone, if so
 */
public record Found(
    List<Candidate> candidates,
    Optional<Set<String>> inUse,
    SortedMap<String, String> bad,
    SortedMap<String, String> waiting,
    Optional<String> uncertain) {
  public Found {
    candidates = List.copyOf(candidates);
    inUse = inUse.map(TreeSet::new).map(Collections::unmodifiableSortedSet);
    bad = Collections.unmodifiableSortedMap(new TreeMap<>(bad));
    waiting = Collections.unmodifiableSortedMap(new TreeMap<>(waiting));
  }

  /** Cards alone, of generators that are all in use. */
  public static Found of(List<Candidate> candidates) {
    return new Found(
        candidates, Optional.empty(), new TreeMap<>(), new TreeMap<>(), Optional.empty());
  }

  /** The same with other cards. */
  public Found with(List<Candidate> others) {
    return new Found(others, inUse, bad, waiting, uncertain);
  }
}
