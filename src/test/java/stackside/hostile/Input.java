package stackside.hostile;

import java.util.SortedMap;
import java.util.function.Supplier;

/**
 * One hostile content folder: files that replace those of a valid one, or are added to them.
 *
 * @param kind what produced it, for the counts
 * @param name identifies it, so that it can be tried again
 * @param files produced on demand, because they can be large
 */
record Input(
    String kind, String name, Ground.Kind ground, Supplier<SortedMap<String, byte[]>> files) {

  @Override
  public String toString() {
    return kind + " " + name + " on " + ground;
  }
}
