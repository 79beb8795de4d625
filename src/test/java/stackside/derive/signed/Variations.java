package stackside.derive.signed;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.net.URI;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stackside.ModelRecords;
import stackside.model.Fact;
import stackside.model.Level;
import stackside.model.Mode;
import stackside.model.Prose;
import stackside.model.SiteGroup;
import stackside.model.Socket;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.source.Location;

/**
 * Every record that differs from a given one in a single component, at any depth, found by
 * reflection. A thing that is only referred to varies as a whole; sockets and modes belong to their
 * machine and vary from inside.
 */
final class Variations {
  private Variations() {}

  /**
   * One of them.
   *
   * @param component the record and its component that differs, as {@code PedalSetting.limit}
   */
  record Variation(String component, Object value) {
    Variation inside(Object whole) {
      return new Variation(component, whole);
    }
  }

  static Stream<Variation> of(Thing thing) {
    return components(thing, (Record) thing);
  }

  /** Those of a record that is no thing. */
  static Stream<Variation> components(Record record) {
    return components(record, record);
  }

  /** A unit with another value in one of its components. */
  static Unit with(Unit unit, String component, Object value) {
    RecordComponent[] components = Unit.class.getRecordComponents();
    int index =
        IntStream.range(0, components.length)
            .filter(i -> components[i].getName().equals(component))
            .findFirst()
            .orElseThrow();
    return (Unit) with((Record) unit, index, value).findFirst().orElseThrow();
  }

  private static Stream<Variation> components(Object owner, Record record) {
    RecordComponent[] components = record.getClass().getRecordComponents();
    return IntStream.range(0, components.length)
        .boxed()
        .filter(i -> components[i].getType() != Location.class)
        .flatMap(
            i -> {
              String name = name(record.getClass(), components[i]);
              return of(name, owner, ModelRecords.read(record, components[i]))
                  .flatMap(change -> with(record, i, change.value()).map(change::inside));
            });
  }

  private static String name(Class<?> type, RecordComponent component) {
    return type.getSimpleName() + "." + component.getName();
  }

  private static Stream<Variation> of(String name, Object owner, Object value) {
    if (value instanceof Fact<?> fact) {
      return of(name, owner, fact.value())
          .map(change -> change.inside(new Fact<>(change.value(), fact.at())));
    }
    if (value instanceof Optional<?> optional) {
      return optional.stream()
          .flatMap(
              present ->
                  Stream.concat(
                      Stream.of(new Variation(name, Optional.empty())),
                      of(name, owner, present)
                          .map(change -> change.inside(Optional.of(change.value())))));
    }
    if (value instanceof List<?> list) {
      return elements(name, owner, list);
    }
    if (value instanceof Map<?, ?> map) {
      return entries(name, owner, map);
    }
    if (value instanceof Prose prose) {
      return Stream.of(new Variation(name, reworded(prose)));
    }
    if (value instanceof Thing thing && !(thing instanceof Socket || thing instanceof Mode)) {
      return Stream.of(new Variation(name, other(thing)));
    }
    if (value instanceof Thing owned && !name.endsWith("sockets") && !name.endsWith("modes")) {
      return Stream.of(new Variation(name, other(owned)));
    }
    if (value instanceof Record record && isOfTheModel(record)) {
      return components(owner, record);
    }
    return leaf(value).map(other -> new Variation(name, other));
  }

  /** Records that are written key by key; all others are one value to their author. */
  private static boolean isOfTheModel(Record record) {
    return Stream.of(record.getClass().getRecordComponents())
            .anyMatch(component -> component.getType() == Location.class)
        || record.getClass().getSimpleName().equals("Evidence");
  }

  private static Stream<Variation> elements(String name, Object owner, List<?> list) {
    Stream<Variation> inside =
        IntStream.range(0, list.size())
            .boxed()
            .flatMap(
                i ->
                    of(name, owner, list.get(i))
                        .map(
                            change -> {
                              List<Object> changed = new ArrayList<>(list);
                              changed.set(i, change.value());
                              return change.inside(changed);
                            }));
    return list.isEmpty()
        ? inside
        : Stream.concat(Stream.of(new Variation(name, list.subList(0, list.size() - 1))), inside);
  }

  private static Stream<Variation> entries(String name, Object owner, Map<?, ?> map) {
    return map.entrySet().stream()
        .flatMap(
            entry -> {
              Map<Object, Object> fewer = new LinkedHashMap<>(map);
              fewer.remove(entry.getKey());
              Stream<Variation> inside =
                  of(name, owner, entry.getValue())
                      .map(
                          change -> {
                            Map<Object, Object> changed = new LinkedHashMap<>(map);
                            changed.put(entry.getKey(), change.value());
                            return change.inside(changed);
                          });
              return Stream.concat(Stream.of(new Variation(name, fewer)), inside);
            });
  }

  private static Prose reworded(Prose prose) {
    return new Prose(
        prose.at(),
        List.of(
            new Prose.Paragraph(prose.at(), List.of(new Prose.Words(prose.plain() + " More.")))));
  }

  /** Another thing of the kind: other id and other name, or a group of other sites. */
  private static Thing other(Thing thing) {
    Record record = (Record) thing;
    RecordComponent[] components = record.getClass().getRecordComponents();
    Object[] values = Stream.of(components).map(each -> ModelRecords.read(record, each)).toArray();
    for (int i = 0; i < components.length; i++) {
      if (values[i] instanceof ThingId id) {
        values[i] = new ThingId(id.kind(), id.slug() + "-other");
      } else if (components[i].getName().equals("name")) {
        Fact<String> name = new Fact<>(thing.title() + " other", thing.at());
        values[i] =
            components[i].getType() == Optional.class
                ? Optional.of(name)
                : components[i].getType() == String.class ? name.value() : name;
      } else if (thing instanceof SiteGroup && values[i] instanceof List<?> members) {
        values[i] = members.subList(1, members.size());
      }
    }
    return (Thing) make(record.getClass(), values).orElseThrow();
  }

  private static Stream<?> leaf(Object value) {
    if (value instanceof String text) {
      return Stream.of(text + "x");
    }
    if (value instanceof Boolean flag) {
      return Stream.of(!flag);
    }
    if (value instanceof Integer number) {
      return Stream.of(number + 1);
    }
    if (value instanceof Double number) {
      return Stream.of(number * 2 + 1);
    }
    if (value instanceof LocalDate day) {
      return Stream.of(day.plusDays(1));
    }
    if (value instanceof ThingId id) {
      return Stream.of(new ThingId(id.kind(), id.slug() + "-other"));
    }
    if (value instanceof Level level) {
      return Stream.of(new Level(level.text() + "x"));
    }
    if (value instanceof Enum<?> word) {
      Object[] all = word.getDeclaringClass().getEnumConstants();
      return Stream.of(all).filter(other -> other != word);
    }
    if (value instanceof URI address) {
      return Stream.of(URI.create(address + "/other"));
    }
    if (value instanceof Record record) {
      return parts(record);
    }
    throw new AssertionError("no variation of " + value.getClass());
  }

  /** Other values of a quantity, a range, a shape: as many as its constructor lets through. */
  private static Stream<?> parts(Record record) {
    RecordComponent[] components = record.getClass().getRecordComponents();
    List<Object> others = new ArrayList<>();
    for (int i = 0; i < components.length; i++) {
      Object value = ModelRecords.read(record, components[i]);
      Stream<?> inside =
          value instanceof List<?> list
              ? list.isEmpty() ? Stream.empty() : Stream.of(list.subList(0, list.size() - 1))
              : value instanceof Optional<?> optional
                  ? optional.stream().flatMap(Variations::leaf).map(Optional::of)
                  : leaf(value);
      for (Object other : inside.toList()) {
        with(record, i, other).forEach(others::add);
      }
    }
    return others.stream();
  }

  private static Stream<Object> with(Record record, int index, Object value) {
    RecordComponent[] components = record.getClass().getRecordComponents();
    Object[] values = Stream.of(components).map(each -> ModelRecords.read(record, each)).toArray();
    values[index] = value;
    return make(record.getClass(), values).stream();
  }

  /** Absent where the constructor refuses such a record. */
  private static Optional<Object> make(Class<?> type, Object[] values) {
    try {
      Constructor<?> constructor =
          type.getDeclaredConstructor(
              Stream.of(type.getRecordComponents())
                  .map(RecordComponent::getType)
                  .toArray(Class<?>[]::new));
      constructor.setAccessible(true);
      return Optional.of(constructor.newInstance(values));
    } catch (InvocationTargetException e) {
      return Optional.empty();
    } catch (ReflectiveOperationException e) {
      throw new LinkageError(e.getMessage(), e);
    }
  }

  /** Every component that a record type holds, at any depth, as variations name them. */
  static Set<String> components(Class<?> type) {
    Set<String> found = new TreeSet<>();
    collect(type, found);
    return found;
  }

  private static void collect(Class<?> type, Set<String> found) {
    for (RecordComponent component : type.getRecordComponents()) {
      if (component.getType() != Location.class) {
        String name = name(type, component);
        List<Class<?>> inside =
            types(component.getGenericType()).filter(each -> isInside(each, name)).toList();
        if (inside.isEmpty()) {
          found.add(name);
        }
        inside.forEach(each -> collect(each, found));
      }
    }
  }

  private static boolean isInside(Class<?> type, String name) {
    if (!type.isRecord() || type == Prose.class) {
      return false;
    }
    if (Thing.class.isAssignableFrom(type)) {
      return name.endsWith("sockets") || name.endsWith("modes");
    }
    return type.getSimpleName().equals("Evidence")
        || Stream.of(type.getRecordComponents()).anyMatch(c -> c.getType() == Location.class);
  }

  /** The types that stand in a component: behind lists, maps and facts, and below sealed ones. */
  private static Stream<Class<?>> types(Type type) {
    if (type instanceof ParameterizedType generic) {
      Class<?> raw = (Class<?>) generic.getRawType();
      Stream<Class<?>> own = raw == Fact.class || !raw.isRecord() ? Stream.empty() : Stream.of(raw);
      return Stream.concat(
          own, Stream.of(generic.getActualTypeArguments()).flatMap(Variations::types));
    }
    if (type instanceof Class<?> plain) {
      return plain.isSealed()
          ? Stream.of(plain.getPermittedSubclasses()).flatMap(Variations::types)
          : Stream.of(plain);
    }
    return Stream.empty();
  }
}
