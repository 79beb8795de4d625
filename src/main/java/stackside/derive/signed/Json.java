package stackside.derive.signed;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** A JSON value. Made here, printed by {@link CanonicalJson}, read back by {@link JsonReader}. */
public sealed interface Json {

  /** Whether it holds more than one line can tell. */
  boolean isSeveral();

  /** A value that holds no others. */
  sealed interface Leaf extends Json {
    /** A text without its quotes; all else as it is printed. */
    default String words() {
      return CanonicalJson.of(this);
    }

    @Override
    default boolean isSeveral() {
      return false;
    }
  }

  /** Members by name. The order of writing them does not matter; the printed order is fixed. */
  record Members(SortedMap<String, Json> values) implements Json {
    public Members {
      values = Collections.unmodifiableSortedMap(new TreeMap<>(values));
    }

    public Optional<Json> member(String name) {
      return Optional.ofNullable(values.get(name));
    }

    @Override
    public boolean isSeveral() {
      return true;
    }

    /** The text of a member that is a text. */
    public Optional<String> text(String name) {
      return member(name).filter(Text.class::isInstance).map(value -> ((Text) value).value());
    }
  }

  /** Values in their order. */
  record Items(List<Json> values) implements Json {
    public Items {
      values = List.copyOf(values);
    }

    @Override
    public boolean isSeveral() {
      return values.size() > 1;
    }
  }

  /** A text, possibly empty. */
  record Text(String value) implements Leaf {
    @Override
    public String words() {
      return value;
    }
  }

  /** A number, as far as a double holds it. */
  record Numeral(double value) implements Leaf {
    public Numeral {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException("JSON has no number " + value);
      }
    }
  }

  /** Yes or no. */
  record Flag(boolean value) implements Leaf {}

  /** Nothing, said aloud. */
  record Nothing() implements Leaf {}

  static Json text(String value) {
    return new Text(value);
  }

  static Json number(long value) {
    return new Numeral(value);
  }

  static Json items(List<? extends Json> values) {
    return new Items(List.copyOf(values));
  }

  static Members members(Map<String, ? extends Json> values) {
    return new Members(new TreeMap<>(values));
  }
}
