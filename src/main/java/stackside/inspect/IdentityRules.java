package stackside.inspect;

import static stackside.check.Rule.error;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import stackside.check.Finding;
import stackside.check.Rule;
import stackside.derive.edition.Editions;
import stackside.model.Contact;
import stackside.render.Dates;
import stackside.render.Numbers;
import stackside.render.plan.Block;
import stackside.render.plan.StepLine;

/** Which card it is, whom to call and where its code leads. */
final class IdentityRules {

  private static final double CODE_WIDTH = 30;

  private static final double CODE_MODULE = 0.8;

  private static final double CODE_CLEAR = 4;

  private IdentityRules() {}

  static List<Rule<InspectedCard>> rules() {
    return List.of(
        error(
            "identity-incomplete",
            "a card does not say which card, edition and copy it is",
            IdentityRules::identityIncomplete),
        error(
            "contact-not-on-card",
            "a card or the last step of a drill lacks somebody to call",
            IdentityRules::contactNotOnCard),
        error(
            "code-unreadable",
            "a card's QR code cannot be scanned or leads elsewhere",
            IdentityRules::codeUnreadable));
  }

  private static List<Finding> identityIncomplete(InspectedCard card) {
    String text = card.seen().text();
    List<Finding> found = new ArrayList<>();
    Stream.concat(onEvery(card), card.publication().draft() ? onDraft(card) : onIssued(card))
        .map(InspectedCard::spaced)
        .filter(words -> !text.contains(words))
        .forEach(
            words ->
                found.add(Finding.at(card.at(), card.name() + " does not say '" + words + "'")));
    return found;
  }

  private static Stream<String> onEvery(InspectedCard card) {
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

  /** How many copies there are, as printed behind the space for the number of each. */
  private static String copies(InspectedCard card) {
    return say(card, "card.copy", "{0}", card.plan().room().copies().value())
        .split("\\{0\\} ", 2)[1];
  }

  private static Stream<String> onDraft(InspectedCard card) {
    return Stream.of(say(card, "card.mark-draft"), say(card, "card.unsigned"));
  }

  private static Stream<String> onIssued(InspectedCard card) {
    return Stream.of("card.edition-of", "card.approved", "review.by")
        .map(key -> opening(card, key));
  }

  private static String say(InspectedCard card, String key, Object... values) {
    return card.publication().words().say(key, values);
  }

  /** The beginning of a message, before the first part that is filled in. */
  private static String opening(InspectedCard card, String key) {
    return say(card, key).split("\\{", 2)[0];
  }

  /**
   * Finds cards on which a contact of the location, or its number at the end of a drill, is
   * missing.
   */
  private static List<Finding> contactNotOnCard(InspectedCard card) {
    List<Finding> found = new ArrayList<>();
    String text = card.seen().text();
    for (Contact contact : card.plan().room().location().value().contacts()) {
      String phone = InspectedCard.spaced(Numbers.bind(contact.phone().value()));
      String whole = phone + " " + contact.role().value();
      if (!text.contains(whole)) {
        found.add(Finding.at(contact.at(), card.name() + " lacks '" + whole + "'"));
      }
      for (Block.Drilled drill : card.plan().blocks(Block.Drilled.class)) {
        StepLine last = drill.steps().get(drill.steps().size() - 1);
        if (last.part() == StepLine.Part.ESCALATE
            && !InspectedCard.spaced(last.action().words()).contains(phone)) {
          found.add(
              Finding.at(
                  contact.at(),
                  "the last step of '" + drill.title().words() + "' lacks '" + phone + "'"));
        }
      }
    }
    return found;
  }

  /**
   * Finds codes that do not decode to the printed address, or are too small or too crowded to scan.
   */
  private static List<Finding> codeUnreadable(InspectedCard card) {
    List<Finding> found = new ArrayList<>();
    String address = card.plan().address();
    if (card.seen().code().isEmpty()) {
      found.add(Finding.at(card.at(), card.name() + " has no code that can be read"));
      return found;
    }
    ReadCode code = card.seen().code().get();
    if (!code.text().equals(card.plan().held())) {
      found.add(
          Finding.at(
              card.at(),
              "the code leads to "
                  + code.text()
                  + ", but the card's own address is "
                  + card.plan().held()));
    }
    if (!card.seen().text().contains(address)) {
      found.add(Finding.at(card.at(), card.name() + " does not print the address " + address));
    }
    if (code.box().width() < CODE_WIDTH - 0.05 || code.module() < CODE_MODULE - 0.005) {
      found.add(
          Finding.at(
              card.at(),
              "the code is "
                  + Height.words(code.box().width())
                  + " wide with modules of "
                  + Height.words(code.module())));
    }
    if (code.clear() < CODE_CLEAR - 0.01) {
      found.add(
          Finding.at(
              card.at(),
              "only " + Height.number(code.clear()) + " modules are clear around the code"));
    }
    if (code.level().equals("L")) {
      found.add(Finding.at(card.at(), "the code tolerates only a few damaged modules"));
    }
    return found;
  }
}
