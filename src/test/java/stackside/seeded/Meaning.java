package stackside.seeded;

import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stackside.ModelRecords;
import stackside.model.Fact;
import stackside.model.Thing;
import stackside.model.Unit;
import stackside.source.Location;

/**
 * Everything that a unit says, found by reflection, without the places where it is written, the
 * order in which it is listed, and the alternative names that only the site's search uses. If this
 * is unchanged, an edit changed only an order or such a name.
 */
final class Meaning {
  private Meaning() {}

  static String of(Unit unit) {
    return inside(unit);
  }

  private static String inside(Object record) {
    StringBuilder text = new StringBuilder(record.getClass().getSimpleName()).append('(');
    for (RecordComponent part : record.getClass().getRecordComponents()) {
      if (part.getType() != Location.class && !part.getName().equals("also")) {
        text.append(part.getName())
            .append('=')
            .append(said(ModelRecords.read(record, part)))
            .append(';');
      }
    }
    return text.append(')').toString();
  }

  private static String said(Object value) {
    if (value instanceof Fact<?> fact) {
      return fact.value() instanceof Thing thing ? thing.id().toString() : said(fact.value());
    }
    if (value instanceof Optional<?> some) {
      return some.map(Meaning::said).orElse("nothing");
    }
    if (value instanceof Collection<?> list) {
      return list.stream().map(Meaning::said).sorted().collect(Collectors.joining(",", "[", "]"));
    }
    if (value instanceof Map<?, ?> map) {
      return map.entrySet().stream()
          .map(entry -> said(entry.getKey()) + ":" + said(entry.getValue()))
          .sorted()
          .collect(Collectors.joining(",", "{", "}"));
    }
    return value.getClass().isRecord() ? inside(value) : value.toString();
  }
}
