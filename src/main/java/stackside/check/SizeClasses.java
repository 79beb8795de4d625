package stackside.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stackside.model.Lesion;
import stackside.model.Unit;
import stackside.quantity.Millimetres;

/** Lesions of one shape and kind that have a size: together they should hold each size once. */
record SizeClasses(String what, Bands<Millimetres> sizes) {

  /** All groups of sized lesions, in the order of the content. */
  static List<SizeClasses> of(Unit unit) {
    Map<String, List<Bands.Entry<Millimetres>>> groups = new LinkedHashMap<>();
    for (Lesion lesion : unit.lesions()) {
      lesion
          .size()
          .ifPresent(
              size ->
                  groups
                      .computeIfAbsent(words(lesion), words -> new ArrayList<>())
                      .add(new Bands.Entry<>(lesion, size)));
    }
    List<SizeClasses> all = new ArrayList<>();
    groups.forEach((words, entries) -> all.add(new SizeClasses(words, new Bands<>(entries))));
    return all;
  }

  private static String words(Lesion lesion) {
    String kind = lesion.kind().map(it -> it.value().spoken() + " ").orElse("");
    String shape = lesion.shape().map(it -> it.value().word() + " ").orElse("");
    return shape + kind + "lesions";
  }
}
