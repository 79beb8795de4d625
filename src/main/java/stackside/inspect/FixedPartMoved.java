package stackside.inspect;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.render.plan.Block;
import stackside.render.plan.Phrase;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Finds identity, make-safe lines or contacts at another place or size than on the other cards of
 * the location.
 */
final class FixedPartMoved implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "fixed-part-moved",
          Severity.ERROR,
          "what a nurse finds by habit stands elsewhere on this card");

  @Override
  public Fault fault() {
    return FAULT;
  }

  /** Where words begin, and their size, to a tenth. */
  private record Spot(long left, long base, long points) {
    static Spot of(PrintedWords words) {
      return new Spot(
          Math.round(words.box().left() * 10),
          Math.round(words.base() * 10),
          Math.round(words.points() * 10));
    }
  }

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Problem> problems = new ArrayList<>();
    fixed(card).forEach(phrase -> judge(card, phrase, problems));
    return problems;
  }

  private static void judge(InspectedCard card, Phrase phrase, List<Problem> problems) {
    Map<Spot, Integer> spots = new LinkedHashMap<>();
    for (Inspection fellow : card.fellows()) {
      find(fellow, phrase).ifPresent(words -> spots.merge(Spot.of(words), 1, Integer::sum));
    }
    Optional<Spot> usual =
        spots.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
    Optional<Spot> here = find(card.seen(), phrase).map(Spot::of);
    if (usual.isPresent() && here.isPresent() && !usual.equals(here)) {
      problems.add(
          FAULT.at(
              card.at(),
              "'"
                  + phrase.words()
                  + "' stands elsewhere on "
                  + card.name()
                  + ", than on most cards of "
                  + card.plan().room().location().value().title()));
    }
  }

  private static Stream<Phrase> fixed(InspectedCard card) {
    return card.plan().blocks().stream().flatMap(FixedPartMoved::fixed);
  }

  private static Stream<Phrase> fixed(Block block) {
    if (block instanceof Block.Identity identity) {
      return Stream.of(identity.warning());
    }
    return block instanceof Block.MakeSafe || block instanceof Block.Contacts
        ? block.phrases()
        : Stream.empty();
  }

  private static Optional<PrintedWords> find(Inspection seen, Phrase phrase) {
    return seen.words().stream()
        .filter(words -> words.text().equals(InspectedCard.spaced(phrase.words())))
        .findFirst();
  }
}
