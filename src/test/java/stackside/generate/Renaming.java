package stackside.generate;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.model.Asset;
import stackside.model.Checklist;
import stackside.model.Drill;
import stackside.model.HandbookPage;
import stackside.model.LearningPath;
import stackside.model.Thing;
import stackside.model.Unit;

/**
 * Adds new endings to the ids of the pattern unit, wherever they occur in a text. Equipment is
 * renamed once for every ten parts, because hospitals buy from the same catalogue. Anatomy, lesions
 * and sources are never renamed.
 */
final class Renaming {
  static final int PARTS_A_CATALOGUE = 10;

  private final SortedMap<String, String> ids = new TreeMap<>();
  private final Pattern anyId;
  private final Pattern anyProse;
  private final String ending;

  private Renaming(Unit unit, int part) {
    this.ending = "-" + Birds.id(part);
    put(Stream.of(unit.machines(), unit.rooms(), unit.profiles(), unit.details().locations()));
    unit.details().locations().forEach(location -> put(Stream.of(location.contacts())));
    put(Stream.of(unit.checklists().stream().filter(Renaming::isOfOneMachine).toList()));
    put(Stream.of(unit.drills().stream().filter(Renaming::isOfOneMachine).toList()));
    unit.assets().stream()
        .map(Asset::id)
        .forEach(id -> ids.put(id.local(), id.local().replaceFirst("-0?", "-" + part)));
    if (startsCatalogue(part - part % PARTS_A_CATALOGUE)) {
      String kit = "-" + Birds.id(part - part % PARTS_A_CATALOGUE);
      Stream.of(unit.instruments(), unit.cables(), unit.electrodes(), unit.footSwitches())
          .flatMap(List::stream)
          .forEach(thing -> ids.put(thing.id().local(), thing.id().local() + kit));
    }
    this.anyId = words(ids.keySet().stream());
    this.anyProse =
        Pattern.compile(
            "\\b(handbook|path):("
                + Stream.concat(
                        unit.handbook().stream()
                            .filter(page -> !page.isChapter())
                            .map(HandbookPage::id),
                        unit.paths().stream().map(LearningPath::id))
                    .map(id -> Pattern.quote(id.local()))
                    .collect(Collectors.joining("|"))
                + ")(?![\\w-])");
  }

  /** The pattern itself is part zero and keeps its ids. */
  static Renaming of(Unit unit, int part) {
    return new Renaming(unit, part);
  }

  /** Whether this part introduces its own equipment. */
  static boolean startsCatalogue(int part) {
    return part > 0 && part % PARTS_A_CATALOGUE == 0;
  }

  private static boolean isOfOneMachine(Checklist list) {
    return !list.appliesTo().machines().isEmpty();
  }

  private static boolean isOfOneMachine(Drill drill) {
    return !drill.appliesTo().machines().isEmpty();
  }

  private <T extends Thing> void put(Stream<List<? extends T>> things) {
    things
        .flatMap(List::stream)
        .map(Thing::id)
        .forEach(id -> ids.put(id.local(), id.local() + ending));
  }

  private static Pattern words(Stream<String> words) {
    return Pattern.compile(
        "(?<![\\w-])("
            + words.map(Pattern::quote).collect(Collectors.joining("|"))
            + ")(?![\\w-])");
  }

  /** A text with all its ids renamed. */
  String in(String text) {
    Matcher prose = anyProse.matcher(text);
    String done = prose.replaceAll(found -> found.group() + ending);
    return anyId.matcher(done).replaceAll(found -> ids.get(found.group()));
  }

  /** The id of something named only in prose. */
  String ofProse(String id) {
    return id + ending;
  }

  /** The id of anything else. */
  String id(String id) {
    return ids.getOrDefault(id, id);
  }
}
