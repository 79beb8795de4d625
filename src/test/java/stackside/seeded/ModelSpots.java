package stackside.seeded;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stackside.ModelRecords;
import stackside.model.Evidence;
import stackside.model.Fact;
import stackside.model.HandbookPage;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.source.Location;

/** Finds by reflection every component of the model, and every place where a unit writes one. */
final class ModelSpots {
  private final List<Spot> spots = new ArrayList<>();

  private ModelSpots() {}

  /** All spots of a unit, in model order. */
  static List<Spot> of(Unit unit) {
    ModelSpots found = new ModelSpots();
    found.inside(unit, Location.startOf("unit.yaml"));
    found.spots.removeIf(spot -> HandbookPage.isOfTheProgram(spot.at()));
    return found.spots;
  }

  /** The components of all model records that an author writes; locations are not written. */
  static List<String> components() {
    return ModelRecords.components(type -> true, ModelSpots::isWritten);
  }

  private static boolean isWritten(RecordComponent part) {
    return part.getType() != Location.class && !part.getGenericType().toString().contains("Broken");
  }

  private void inside(Object value, Location near) {
    if (!value.getClass().isRecord()
        || !value.getClass().getPackageName().equals("stackside.model")
        || ModelRecords.isProse(value.getClass())) {
      return;
    }
    for (RecordComponent part : value.getClass().getRecordComponents()) {
      if (isWritten(part)) {
        Object held = ModelRecords.read(value, part);
        if (held instanceof Collection<?> list && !list.isEmpty()) {
          spots.add(
              new Spot(
                  ModelRecords.name(value.getClass(), part),
                  held,
                  placeOf(list.iterator().next(), near)));
        }
        component(ModelRecords.name(value.getClass(), part), held, near);
      }
    }
  }

  private void component(String component, Object value, Location near) {
    if (value instanceof Optional<?> some) {
      some.ifPresent(each -> component(component, each, near));
    } else if (value instanceof Collection<?> list) {
      list.forEach(each -> component(component, each, near));
    } else if (value instanceof Map<?, ?> map) {
      map.values().forEach(each -> component(component, each, near));
    } else if (value instanceof Fact<?> fact) {
      spots.add(new Spot(component, fact.value(), fact.at()));
      if (!(fact.value() instanceof Thing)) {
        inside(fact.value(), fact.at());
      }
    } else {
      Location at = placeOf(value, near);
      spots.add(new Spot(component, value, at));
      if (!(value instanceof ThingId)) {
        inside(value, at);
      }
    }
  }

  private static Location placeOf(Object value, Location near) {
    if (value instanceof Fact<?> fact) {
      return fact.at();
    }
    if (!value.getClass().isRecord() || value instanceof Evidence) {
      return near;
    }
    return Arrays.stream(value.getClass().getRecordComponents())
        .filter(part -> part.getType() == Location.class)
        .findFirst()
        .map(part -> (Location) ModelRecords.read(value, part))
        .orElse(near);
  }
}
