package stackside.inspect;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.model.ReadingDistance;
import stackside.render.Publication;
import stackside.render.plan.Block;
import stackside.render.plan.CardPlan;
import stackside.render.plan.Phrase;
import stackside.source.Location;

/**
 * A card as planned and as printed.
 *
 * @param seen what the finished PDF holds
 * @param fellows the finished cards of the same location, this one among them
 */
public record InspectedCard(
    Publication publication, CardPlan plan, Inspection seen, List<Inspection> fellows) {

  /** Larger type does not count as a footer, even with the same words. */
  private static final double FOOTER_BELOW = 12;

  public InspectedCard {
    fellows = List.copyOf(fellows);
  }

  ReadingDistance distance() {
    return publication.unit().details().readingDistance();
  }

  /** The card's name as a sentence uses it. */
  String name() {
    return "the card '"
        + plan.title()
        + "' of "
        + plan.room().title()
        + ", "
        + plan.asset().title();
  }

  /** The place of the card itself. */
  Location at() {
    return plan.part().map(part -> part.at()).orElse(plan.room().at());
  }

  /** The place that printed words come from, or the place of the card. */
  Location at(PrintedWords words) {
    return source(words).map(Phrase::at).orElse(at());
  }

  private Optional<Phrase> source(PrintedWords words) {
    String text = words.text();
    List<Phrase> holding =
        plan.phrases().filter(phrase -> spaced(phrase.words()).contains(text)).toList();
    return holding.stream()
        .filter(phrase -> spaced(phrase.words()).equals(text))
        .findFirst()
        .or(() -> holding.stream().findFirst());
  }

  /** With ordinary spaces, as printed. */
  static String spaced(String words) {
    return words.replace('\u00a0', ' ');
  }

  /** Whether these words belong to the footer, which is read close up. */
  boolean inFooter(PrintedWords words) {
    StringBuilder footer = new StringBuilder();
    plan.blocks(Block.Footer.class).stream()
        .flatMap(Block.Footer::phrases)
        .forEach(phrase -> footer.append(spaced(phrase.words())).append(' '));
    StringBuilder code = new StringBuilder();
    plan.blocks(Block.Code.class).stream()
        .flatMap(Block.Code::phrases)
        .forEach(phrase -> code.append(spaced(phrase.words())).append(' '));
    return words.points() < FOOTER_BELOW
        && words.text().length() > 2
        && (footer.toString().contains(words.text()) || code.toString().contains(words.text()));
  }

  /** What must be read from afar: identity, make-safe lines, drill titles, telephone numbers. */
  Stream<Phrase> far() {
    return plan.blocks().stream().flatMap(InspectedCard::far);
  }

  private static Stream<Phrase> far(Block block) {
    if (block instanceof Block.Identity identity) {
      return Stream.of(identity.room(), identity.machine(), identity.asset());
    }
    if (block instanceof Block.MakeSafe makeSafe) {
      return makeSafe.lines().stream();
    }
    if (block instanceof Block.Drilled drill) {
      return Stream.of(drill.title());
    }
    if (block instanceof Block.Contacts contacts) {
      return contacts.calls().stream().map(Block.Contacts.Call::phone);
    }
    if (block instanceof Block.Marks
        || block instanceof Block.Maps
        || block instanceof Block.Answers
        || block instanceof Block.SetUp
        || block instanceof Block.Footer
        || block instanceof Block.Code) {
      return Stream.empty();
    }
    throw new IllegalStateException("say in InspectedCard.far from how far it is read: " + block);
  }
}
