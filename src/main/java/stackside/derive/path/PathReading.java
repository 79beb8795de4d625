package stackside.derive.path;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.signed.Fingerprint;
import stackside.derive.signed.SignedFacts;
import stackside.model.Checklist;
import stackside.model.Drill;
import stackside.model.Fact;
import stackside.model.HandbookPage;
import stackside.model.LearningPath;
import stackside.model.Prose;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.Unit;

/** One thing on the reading list of a path: how long it takes, and which edition it is. */
public record PathReading(ThingId id, Optional<Thing> thing, int minutes, String edition) {

  /** Reading speed of a careful reader, in words per minute; an assumption without a source. */
  public static final int WORDS_A_MINUTE = 150;

  /**
   * Minutes for a page that people look at rather than read, such as a panel; an assumption without
   * a source.
   */
  public static final int MINUTES_TO_LOOK = 3;

  /** The reading list of a path, in order. */
  public static List<PathReading> of(LearningPath path, Unit unit) {
    return path.reads().stream().map(Fact::value).map(id -> of(id, unit.find(id), unit)).toList();
  }

  private static PathReading of(ThingId id, Optional<Thing> thing, Unit unit) {
    return new PathReading(
        id,
        thing,
        thing.map(PathReading::minutes).orElse(0),
        thing.map(each -> edition(each, unit)).orElse("0"));
  }

  private static int minutes(Thing thing) {
    String words = words(thing);
    return words.isEmpty()
        ? MINUTES_TO_LOOK
        : Math.max(1, (words.split("\\s+").length + WORDS_A_MINUTE - 1) / WORDS_A_MINUTE);
  }

  /** The fingerprint of what is signed; if nothing is signed, that of the words. */
  private static String edition(Thing thing, Unit unit) {
    return SignedFacts.of(unit, thing)
        .map(SignedFacts::fingerprint)
        .orElseGet(
            () ->
                Fingerprint.of(
                    (thing.title() + "\n" + words(thing)).getBytes(StandardCharsets.UTF_8)))
        .shortText();
  }

  private static String words(Thing thing) {
    if (thing instanceof HandbookPage page) {
      return page.texts().stream().map(Prose::plain).collect(Collectors.joining(" "));
    }
    if (thing instanceof Drill drill) {
      List<String> words = new ArrayList<>(List.of(drill.title(), drill.makeSafe().value()));
      drill.checks().forEach(check -> add(words, check.action(), check.see()));
      drill.never().ifPresent(never -> words.add(never.value()));
      return String.join(" ", words);
    }
    return thing instanceof Checklist list
        ? list.steps().stream()
            .flatMap(step -> Stream.concat(Stream.of(step.action()), step.see().stream()))
            .map(Fact::value)
            .collect(Collectors.joining(" "))
        : "";
  }

  private static void add(List<String> words, Fact<String> action, Optional<Fact<String>> see) {
    words.add(action.value());
    see.ifPresent(each -> words.add(each.value()));
  }
}
