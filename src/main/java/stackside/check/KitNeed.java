package stackside.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import stackside.model.Fact;
import stackside.model.Room;
import stackside.model.Thing;
import stackside.source.Fault;
import stackside.source.Location;
import stackside.source.Problem;

/**
 * Something that has to be kept in a room because a profile or a drill needs it there.
 *
 * @param named where the profile or drill names it
 * @param by what needs it, in words
 */
record KitNeed<T extends Thing>(Room room, Fact<T> named, String by) {

  /**
   * The needs that their rooms do not meet, one a mistake: what several rooms lack is pointed out
   * where it is named, what one room lacks in that room.
   */
  static <T extends Thing> List<Problem> unmet(
      Fault fault, List<KitNeed<T>> needs, Function<Room, List<Fact<T>>> kept) {
    List<Problem> found = new ArrayList<>();
    needs.stream()
        .collect(
            Collectors.groupingBy(
                need -> need.named().value().id(), LinkedHashMap::new, Collectors.toList()))
        .values()
        .forEach(same -> found.addAll(unmetOf(fault, same, kept)));
    return found;
  }

  private static <T extends Thing> List<Problem> unmetOf(
      Fault fault, List<KitNeed<T>> same, Function<Room, List<Fact<T>>> kept) {
    List<KitNeed<T>> lacking = same.stream().filter(need -> !need.metBy(kept)).toList();
    List<Room> rooms = lacking.stream().map(KitNeed::room).distinct().toList();
    long needing = same.stream().map(KitNeed::room).distinct().count();
    if (rooms.size() > 2 || (rooms.size() > 1 && rooms.size() == needing)) {
      return List.of(lacking.get(0).keptNowhere(fault, rooms));
    }
    return rooms.stream()
        .flatMap(room -> lacking.stream().filter(it -> it.room().equals(room)).limit(1))
        .map(need -> need.notKept(fault, kept))
        .toList();
  }

  private boolean metBy(Function<Room, List<Fact<T>>> kept) {
    return kept.apply(room).stream().anyMatch(it -> it.value().id().equals(named.value().id()));
  }

  private Problem keptNowhere(Fault fault, List<Room> rooms) {
    return fault
        .at(
            named.at(),
            "%s is needed by %s, and %s do not keep it"
                .formatted(Wording.quoted(named.value()), by, Wording.quoted(rooms)))
        .help("name what the rooms keep, or add it to what they keep");
  }

  private Problem notKept(Fault fault, Function<Room, List<Fact<T>>> kept) {
    Location at = kept.apply(room).stream().findFirst().map(Fact::at).orElse(room.keeps().at());
    return fault
        .at(
            at,
            "%s does not keep %s, which %s needs"
                .formatted(Wording.quoted(room), Wording.quoted(named.value()), by))
        .note(named.at(), "where it is needed")
        .help("add it to what the room keeps, or change what needs it");
  }
}
