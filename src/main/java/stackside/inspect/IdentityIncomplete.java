package stackside.inspect;

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
    Stream.concat(always(card), card.publication().draft() ? draft() : issued())
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
            "Asset number differs? Do not use this card.",
            edition(card),
            "of " + card.plan().room().copies().value(),
            "Destroy older editions.",
            card.plan().fingerprint().shortText());
    return card.publication().demonstration()
        ? Stream.concat(own, Stream.of("Demonstration"))
        : own;
  }

  private static String edition(InspectedCard card) {
    Editions.Edition edition =
        card.publication().editions().of(card.plan().name(), card.publication().on());
    return card.publication().draft()
        ? edition.words() + " of " + Dates.day(card.publication().on(), card.publication().words())
        : edition.words() + " of " + Dates.day(edition.since(), card.publication().words());
  }

  private static Stream<String> draft() {
    return Stream.of("DRAFT", "Not approved");
  }

  private static Stream<String> issued() {
    return Stream.of("Edition ", "Approved ", "Review by ");
  }
}
