package stackside.content;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import stackside.model.Fact;
import stackside.model.Kind;
import stackside.model.ThingId;
import stackside.source.Location;

/**
 * Reads the ids that texts mention, such as {@code socket:cordgrass/mono-1}, and keeps them until
 * everything is read and each can be looked up.
 */
final class Mentions {
  private final Findings findings;
  private final List<Fact<ThingId>> met = new ArrayList<>();

  Mentions(Findings findings) {
    this.findings = findings;
  }

  /** The thing that a text of the form {@code kind:id} names. */
  Optional<ThingId> read(String text, Location at) {
    Optional<ThingId> id = ThingId.parse(text);
    if (id.isEmpty()) {
      refuse(text, at);
    }
    id.ifPresent(each -> met.add(new Fact<>(each, at)));
    return id;
  }

  /** The thing of a kind that a bare id names. */
  Optional<Fact<ThingId>> of(Kind kind, Fact<String> text) {
    if (!ThingId.isId(kind, text.value())) {
      findings.add(
          ReadingFaults.NOT_AN_ID
              .at(
                  text.at(),
                  Quote.of(text.value())
                      + " is not the id of "
                      + References.withArticle(References.noun(kind)))
              .help("look for spaces and signs that do not belong there"));
      return Optional.empty();
    }
    Fact<ThingId> id = new Fact<>(new ThingId(kind, text.value()), text.at());
    met.add(id);
    return Optional.of(id);
  }

  private void refuse(String text, Location at) {
    int colon = text.indexOf(':');
    String word = colon < 0 ? text : text.substring(0, colon);
    if (colon >= 0 && Kind.named(word).isPresent()) {
      findings.add(
          ReadingFaults.WRONG_LINK
              .at(
                  at,
                  Quote.of(text.substring(colon + 1))
                      + " is not the id of "
                      + References.withArticle(References.noun(Kind.named(word).orElseThrow())))
              .help("write the id as it is in the thing's own file, without spaces"));
      return;
    }
    List<String> words = Arrays.stream(Kind.values()).map(Kind::word).toList();
    List<String> near = colon < 0 ? List.of() : NearNames.of(word, words);
    findings.add(
        ReadingFaults.WRONG_LINK
            .at(at, Quote.of(text) + " does not name anything in the unit")
            .help(
                near.isEmpty()
                    ? "write it in the form 'kind:id', with a kind such as machine, drill or handbook"
                    : NearNames.question(near.stream().map(each -> each + ":").toList())));
  }

  /** Looks up everything that was mentioned so far. */
  void check(References references) {
    check(references, id -> false);
  }

  /** Looks up everything that was mentioned so far, except what is known from elsewhere. */
  void check(References references, Predicate<ThingId> known) {
    met.stream()
        .filter(mention -> !known.test(mention.value()))
        .forEach(mention -> references.check(mention.value(), mention.at()));
  }
}
