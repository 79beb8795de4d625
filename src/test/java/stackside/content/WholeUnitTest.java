package stackside.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stackside.Units;
import stackside.model.Broken;
import stackside.model.Fact;
import stackside.model.Unit;
import stackside.source.Location;
import stackside.source.SourceText;
import stackside.source.Sources;

/**
 * The unit {@code whole} uses every key of the content. Whatever the model can hold must be found
 * somewhere in it, at the place where it is written.
 */
final class WholeUnitTest {

  @Test
  void everyComponentOfTheModel_isBoundSomewhere() {
    Set<String> possible = new TreeSet<>();
    Model.components(Unit.class, possible, new TreeSet<>());
    Set<String> bound = new TreeSet<>();
    collectBound(Units.read("whole"), bound);

    assertThat(possible).hasSizeGreaterThan(250);
    possible.remove("Unit.broken");
    assertThat(bound).containsAll(possible);
  }

  @Test
  void everyPlainText_standsWhereItsFactSays() {
    Reading reading = Units.reading(Units.folder("whole"));
    Set<String> wrong = new TreeSet<>();
    int[] seen = new int[1];
    eachFact(
        reading.unit().orElseThrow(),
        fact -> {
          if (fact.value() instanceof String text) {
            seen[0]++;
            String written = unquoted(written(reading.sources(), fact.at()));
            if (!written.equals(text)
                && !written.equals("# " + text)
                && !written.equals("# What `current` does")) {
              wrong.add(fact.at() + ": '" + text + "' and not '" + written + "'");
            }
          }
        });

    assertThat(seen[0]).isGreaterThan(80);
    assertThat(wrong).isEmpty();
  }

  @Test
  void everyFact_hasAPlaceInsideItsLine() {
    Reading reading = Units.reading(Units.folder("whole"));
    eachFact(
        reading.unit().orElseThrow(),
        fact -> {
          String line = line(reading.sources(), fact.at());
          assertThat(fact.at().column() - 1 + fact.at().length())
              .as(fact.at() + " " + fact.value())
              .isLessThanOrEqualTo(line.length());
        });
  }

  private static String written(Sources sources, Location at) {
    return line(sources, at).substring(at.column() - 1, at.column() - 1 + at.length());
  }

  private static String line(Sources sources, Location at) {
    SourceText text = sources.files().get(at.file());
    return text.line(at.line());
  }

  private static String unquoted(String text) {
    return text.matches("\".*\"") ? text.substring(1, text.length() - 1) : text;
  }

  private static void collectBound(Object value, Set<String> bound) {
    for (Object inner : insides(value)) {
      collectBound(inner, bound);
    }
    if (value instanceof Record whole) {
      for (RecordComponent component : whole.getClass().getRecordComponents()) {
        if (!isAbsent(Model.read(component, whole))) {
          bound.add(Model.name(component));
        }
      }
    }
  }

  private static void eachFact(Object value, java.util.function.Consumer<Fact<?>> consumer) {
    if (value instanceof Fact<?> fact) {
      consumer.accept(fact);
    }
    insides(value).forEach(inner -> eachFact(inner, consumer));
  }

  private static boolean isAbsent(Object value) {
    return value.equals(Optional.empty())
        || (value instanceof Collection<?> list && list.isEmpty())
        || (value instanceof Map<?, ?> map && map.isEmpty());
  }

  private static List<?> insides(Object value) {
    if (value instanceof Optional<?> optional) {
      return optional.map(List::of).orElse(List.of());
    }
    if (value instanceof Collection<?> list) {
      return List.copyOf(list);
    }
    if (value instanceof Map<?, ?> map) {
      return List.copyOf(map.values());
    }
    return value instanceof Record whole
        ? java.util.Arrays.stream(whole.getClass().getRecordComponents())
            .map(component -> Model.read(component, whole))
            .toList()
        : List.of();
  }

  /** The types of the model, walked from the unit. */
  private static final class Model {
    private static final Set<String> ELSEWHERE = Set.of(Broken.class.getName());

    static void components(Type type, Set<String> names, Set<String> seen) {
      if (type instanceof ParameterizedType generic) {
        for (Type argument : generic.getActualTypeArguments()) {
          components(argument, names, seen);
        }
        components(generic.getRawType(), names, seen);
        return;
      }
      if (!(type instanceof Class<?> plain)
          || !plain.getName().startsWith("stackside.model")
          || ELSEWHERE.contains(plain.getName())
          || !seen.add(plain.getName())) {
        return;
      }
      if (plain.isSealed()) {
        for (Class<?> permitted : plain.getPermittedSubclasses()) {
          components(permitted, names, seen);
        }
      }
      if (plain.isRecord()) {
        for (RecordComponent component : plain.getRecordComponents()) {
          names.add(name(component));
          components(component.getGenericType(), names, seen);
        }
      }
    }

    static String name(RecordComponent component) {
      String record = component.getDeclaringRecord().getName();
      return record.substring(record.lastIndexOf('.') + 1) + "." + component.getName();
    }

    static Object read(RecordComponent component, Record whole) {
      try {
        return component.getAccessor().invoke(whole);
      } catch (ReflectiveOperationException e) {
        throw new LinkageError(e.getMessage(), e);
      }
    }
  }

  @Test
  void everythingReadFromTheWholeUnit_isFoundByItsId() {
    Unit unit = Units.read("whole");

    assertThat(unit.things().map(thing -> thing.id().toString()).collect(Collectors.toSet()))
        .contains(
            "location:groyne-infirmary",
            "contact:groyne-duty",
            "role:lead-nurse",
            "patients:child",
            "machine:sandwort",
            "socket:sandwort/left",
            "mode:cordgrass/interval-cut",
            "asset:EQ-0533",
            "instrument:argon-probe",
            "cable:snare-cable",
            "electrode:split-adult",
            "foot-switch:twin",
            "site:caecum",
            "site-group:large-bowel",
            "step:margin",
            "lesion:flat-20-up",
            "profile:sandwort-flat-20-margin",
            "checklist:time-out",
            "drill:no-effect",
            "room:room-2",
            "path:nurse",
            "handbook:what-current-does",
            "source:hearsay");
  }
}
