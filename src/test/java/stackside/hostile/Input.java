package stackside.hostile;

import java.util.SortedMap;
import java.util.function.Supplier;

/**
 * One hostile content folder: files that stand in place of those of a sound one, or beside them.
 *
 * @param kind what made it, for the counts
 * @param name tells it apart, so that it can be tried again
 * @param files made when they are needed, for they can be large
 */
record Input(
    String kind, String name, Ground.Kind ground, Supplier<SortedMap<String, byte[]>> files) {

  @Override
  public String toString() {
    return kind + " " + name + " on " + ground;
  }
}
