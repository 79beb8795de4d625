package stackside.render.site;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.Unit;

/**
 * Which thing mentions which, in its facts or its prose. This is read from the records themselves,
 * so that a new content field cannot be forgotten here.
 */
final class Mentions {
  private final Map<ThingId, SortedSet<ThingId>> mentioning = new TreeMap<>();

  private Mentions() {}

  static Mentions of(Unit unit) {
    Mentions mentions = new Mentions();
    unit.things().forEach(thing -> mentions.read(thing));
    return mentions;
  }

  /** The things that mention this one, sorted by kind and id. */
  List<ThingId> of(ThingId id) {
    return List.copyOf(mentioning.getOrDefault(id, new TreeSet<>()));
  }

  private void read(Thing thing) {
    if (thing instanceof Record record) {
      components(record).forEach(part -> walk(thing, part));
    }
  }

  private void walk(Thing source, Object part) {
    if (part instanceof Thing thing) {
      mention(source, thing.id());
    } else if (part instanceof ThingId id) {
      mention(source, id);
    } else if (part instanceof Optional<?> optional) {
      optional.ifPresent(value -> walk(source, value));
    } else if (part instanceof Collection<?> several) {
      several.forEach(value -> walk(source, value));
    } else if (part instanceof Map<?, ?> map) {
      map.values().forEach(value -> walk(source, value));
    } else if (part instanceof Record record
        && record.getClass().getPackageName().startsWith("stackside.model")) {
      components(record).forEach(value -> walk(source, value));
    }
  }

  private void mention(Thing source, ThingId id) {
    if (!source.id().equals(id)) {
      mentioning.computeIfAbsent(id, key -> new TreeSet<>()).add(source.id());
    }
  }

  private static List<Object> components(Record record) {
    List<Object> values = new ArrayList<>();
    for (RecordComponent component : record.getClass().getRecordComponents()) {
      try {
        component.getAccessor().setAccessible(true);
        values.add(component.getAccessor().invoke(record));
      } catch (IllegalAccessException | InvocationTargetException e) {
        throw new IllegalStateException("cannot read " + component, e);
      }
    }
    return values;
  }
}
