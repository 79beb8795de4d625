package stackside.seeded;

import java.util.List;
import java.util.stream.Stream;

/** The texts that the content has for each component: what an author could have written. */
record Pool(Lines lines, List<Spot> spots) {

  /** The texts of the same component near a spot: in its file, or in a table of the same asset. */
  Stream<String> of(Spot spot) {
    return spots.stream()
        .filter(other -> other.component().equals(spot.component()))
        .filter(other -> other.value().getClass() == spot.value().getClass())
        .filter(other -> other.at().file().equals(spot.at().file()))
        .filter(other -> sameOwner(spot, other))
        .map(other -> lines.text(other.at()))
        .filter(text -> !text.startsWith("{") && !text.startsWith("["));
  }

  private boolean sameOwner(Spot one, Spot other) {
    boolean owned = one.component().matches("(ProgramReading|OutputCheck)\\.(socket|mode)");
    return !owned || asset(one).equals(asset(other));
  }

  private String asset(Spot spot) {
    return lines.line(spot.at()).replaceFirst(",.*", "");
  }
}
