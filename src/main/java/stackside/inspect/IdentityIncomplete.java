package stackside.inspect;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import stackside.derive.edition.Editions;
import stackside.render.Dates;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds cards from which somebody could not tell whether it is the right one, and in force. */
final class IdentityIncomplete implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "identity-incomplete",
          Severity.ERROR,
          "a card does not say which card, edition and copy it is");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(InspectedCard card) {
    String text = card.seen().text();
    List<Problem> problems = new ArrayList<>();
    Stream.concat(always(card), card.publication().draft() ? draft(card) : issued(card))
        .map(InspectedCard::spaced)
        .filter(words -> !text.contains(words))
        .forEach(
            words ->
                problems.add(FAULT.at(card.at(), card.name() + " does not say '" + words + "'")));
    return problems;
  }

  private static Stream<String> always(InspectedCard card) {
    Stream<String> own =
        Stream.of(
            card.plan().room().title(),
            card.plan().asset().title(),
            card.plan().asset().machine().value().title(),
            card.plan().title(),
            say(card, "card.asset-differs"),
            edition(card),
            copies(card),
            say(card, "card.destroy"),
            card.plan().fingerprint().shortText());
    return card.publication().demonstration()
        ? Stream.concat(own, Stream.of(say(card, "card.mark-demonstration")))
        : own;
  }

  private static String edition(InspectedCard card) {
    Editions.Edition edition =
        card.publication().editions().of(card.plan().name(), card.publication().on());
    return card.publication().draft()
        ? say(card, "card.draft-of", edition.words(), day(card, card.publication().on()))
        : say(card, "card.edition-of", edition.words(), day(card, edition.since()));
  }

  private static String day(InspectedCard card, LocalDate day) {
    return Dates.day(day, card.publication().words());
  }

  /** How many copies there are, as it stands behind the place for the number of each. */
  private static String copies(InspectedCard card) {
    return say(card, "card.copy", "{0}", card.plan().room().copies().value())
        .split("\\{0\\} ", 2)[1];
  }

  private static Stream<String> draft(InspectedCard card) {
    return Stream.of(say(card, "card.mark-draft"), say(card, "card.unsigned"));
  }

  private static Stream<String> issued(InspectedCard card) {
    return Stream.of("card.edition-of", "card.approved", "review.by")
        .map(key -> opening(card, key));
  }

  private static String say(InspectedCard card, String key, Object... values) {
    return card.publication().words().say(key, values);
  }

  /** A message up to what is put in. */
  private static String opening(InspectedCard card, String key) {
    return say(card, key).split("\\{", 2)[0];
  }
}
