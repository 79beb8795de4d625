package stackside.derive.question;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.derive.coverage.Cell;
import stackside.derive.difference.Differences;
import stackside.derive.difference.RoomAtAsset;
import stackside.derive.question.Subject.AnswerTo;
import stackside.model.Profile;
import stackside.model.Settings;
import stackside.model.ThingId;

/** What is approved at each place, looked up once for several topics. */
record AnswersByPlace(Analysis analysis, Map<List<ThingId>, AtPlace> byPlace) {

  AnswersByPlace {
    byPlace = Collections.unmodifiableMap(byPlace);
  }

  /** The answers used at a place, and the cell of each question. */
  record AtPlace(List<Profile> profiles, Map<List<ThingId>, Cell> cells) {}

  static AnswersByPlace of(Analysis analysis) {
    Map<List<ThingId>, AtPlace> byPlace = new LinkedHashMap<>();
    for (RoomAtAsset place : Differences.places(analysis.unit())) {
      Map<List<ThingId>, Cell> cells = new LinkedHashMap<>();
      analysis
          .coverage()
          .of(place.room(), place.asset())
          .forEach(cell -> cells.put(key(question(cell)), cell));
      List<Profile> profiles =
          analysis.unit().profilesServing(place.room()).stream()
              .filter(profile -> profile.machine().value().id().equals(place.machine().id()))
              .toList();
      byPlace.put(key(place), new AtPlace(profiles, cells));
    }
    return new AnswersByPlace(analysis, byPlace);
  }

  private static List<ThingId> key(RoomAtAsset place) {
    return List.of(place.room().id(), place.asset().id());
  }

  private static List<ThingId> key(AnswerTo question) {
    return List.of(
        question.lesion().id(),
        question.site().id(),
        question.step().id(),
        question.patients().id());
  }

  private static AnswerTo question(Cell cell) {
    return new AnswerTo(cell.lesion(), cell.site(), cell.step(), cell.patients());
  }

  private AtPlace at(RoomAtAsset place) {
    return byPlace.getOrDefault(key(place), new AtPlace(List.of(), Map.of()));
  }

  /** Every answer used at a place, including alternatives. */
  List<Profile> profiles(RoomAtAsset place) {
    return at(place).profiles();
  }

  Stream<Settings> settings(RoomAtAsset place) {
    return profiles(place).stream().flatMap(profile -> profile.settings().stream());
  }

  /** One question per preferred answer, because its other questions have the same answer. */
  List<AnswerTo> questions(RoomAtAsset place) {
    Map<ThingId, AnswerTo> first = new LinkedHashMap<>();
    for (Cell cell : at(place).cells().values()) {
      cell.cover().answer().ifPresent(answer -> first.putIfAbsent(answer.id(), question(cell)));
    }
    return List.copyOf(first.values());
  }

  /**
   * The preferred answer to a question and its alternatives; empty if the question does not arise.
   */
  List<Profile> answers(RoomAtAsset place, AnswerTo question) {
    Cell cell = at(place).cells().get(key(question));
    return cell == null
        ? List.of()
        : Stream.concat(cell.cover().preferred().stream(), cell.cover().alternatives().stream())
            .toList();
  }
}
