package stackside.model;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stackside.source.Location;

/**
 * The levels that a mode can be set to: consecutive whole numbers, or names, lowest first.
 *
 * @param name what the display calls the level
 */
public record LevelScale(
    Location at,
    Fact<String> name,
    Optional<Fact<Integer>> from,
    Optional<Fact<Integer>> to,
    List<Fact<String>> names) {
  public LevelScale {
    names = List.copyOf(names);

    boolean numbered = from.isPresent() && to.isPresent() && names.isEmpty();
    boolean named = from.isEmpty() && to.isEmpty() && !names.isEmpty();
    if (!numbered && !named) {
      throw new UnreadableText(
          "a level needs either 'from' and 'to', or 'names'", "use one form or the other");
    }
    if (numbered && from.orElseThrow().value() > to.orElseThrow().value()) {
      throw new UnreadableText(
          "the level's 'from' is above its 'to'", "write the lower level first");
    }
  }

  /** All levels, lowest first. */
  public List<Level> levels() {
    if (!names.isEmpty()) {
      return names.stream().map(each -> new Level(each.value())).toList();
    }
    return IntStream.rangeClosed(from.orElseThrow().value(), to.orElseThrow().value())
        .mapToObj(number -> new Level(Integer.toString(number)))
        .toList();
  }
}
