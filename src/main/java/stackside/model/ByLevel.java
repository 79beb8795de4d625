package stackside.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import stackside.source.Location;

/** A value of a mode: one for all levels, or one per level. */
public record ByLevel<T>(Location at, Optional<Fact<T>> all, Map<Level, Fact<T>> each) {
  public ByLevel {
    each = Collections.unmodifiableMap(new LinkedHashMap<>(each));
  }

  /** The value at a level. A mode without levels has a single value. */
  public Optional<Fact<T>> at(Optional<Level> level) {
    return all.or(() -> level.map(each::get));
  }
}
