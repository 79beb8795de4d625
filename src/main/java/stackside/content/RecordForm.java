package stackside.content;

import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import stackside.model.AppliesTo;
import stackside.model.AtLeastOne;
import stackside.model.Key;
import stackside.source.Location;

/** Which keys a record is written with, as its components say. */
record RecordForm(Class<?> type, Constructor<?> constructor, List<Slot> slots) {
  RecordForm {
    slots = List.copyOf(slots);
  }

  /** What happens if a key is not written. */
  enum Need {
    /** Never written: the place of the record itself. */
    PLACE,
    REQUIRED,
    AT_LEAST_ONE,
    OPTIONAL,
    EMPTY_LIST,
    EMPTY_MAP,
    /** For everything. */
    ALL
  }

  /**
   * One component of the record.
   *
   * @param type what the value is bound to; for an optional component what it may hold
   */
  record Slot(String key, Type type, Need need) {
    boolean written() {
      return need != Need.PLACE;
    }

    boolean required() {
      return need == Need.REQUIRED || need == Need.AT_LEAST_ONE;
    }
  }

  static RecordForm of(Class<?> type) {
    RecordComponent[] components = type.getRecordComponents();
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    try {
      return new RecordForm(
          type,
          type.getDeclaredConstructor(types),
          Arrays.stream(components).map(RecordForm::slot).toList());
    } catch (NoSuchMethodException e) {
      throw new IllegalStateException(type + " has no constructor of its components", e);
    }
  }

  List<String> keys() {
    return slots.stream().filter(Slot::written).map(Slot::key).toList();
  }

  Optional<Slot> slot(String key) {
    return slots.stream().filter(slot -> slot.written() && slot.key().equals(key)).findFirst();
  }

  private static Slot slot(RecordComponent component) {
    Key own = component.getAnnotation(Key.class);
    String key = own == null ? kebab(component.getName()) : own.value();
    Type type = component.getGenericType();
    if (component.getType() == Location.class) {
      return new Slot(component.getName(), type, Need.PLACE);
    }
    if (component.getType() == Optional.class) {
      return new Slot(key, ((ParameterizedType) type).getActualTypeArguments()[0], Need.OPTIONAL);
    }
    return new Slot(key, type, need(component));
  }

  private static Need need(RecordComponent component) {
    if (component.isAnnotationPresent(AtLeastOne.class)) {
      return Need.AT_LEAST_ONE;
    }
    if (component.getType() == List.class) {
      return Need.EMPTY_LIST;
    }
    if (component.getType() == Map.class) {
      return Need.EMPTY_MAP;
    }
    return component.getType() == AppliesTo.class ? Need.ALL : Need.REQUIRED;
  }

  private static String kebab(String camel) {
    return camel.replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
  }
}
