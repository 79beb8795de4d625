package stackside.render.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import stackside.derive.edition.Editions;
import stackside.derive.signed.SignedFacts;
import stackside.derive.standing.Fingerprints;
import stackside.derive.standing.SignatureStanding;
import stackside.derive.standing.SignatureStanding.Wanted;
import stackside.derive.standing.Standing;
import stackside.model.Sentence;
import stackside.model.Signature;
import stackside.model.Thing;
import stackside.render.Dates;
import stackside.render.Publication;

/**
 * Says in the footer who approved the contents of a card, when, and until when the approval lasts.
 */
final class ApprovalWords {

  private final Publication publication;
  private final Fingerprints fingerprints;
  private final Map<LocalDate, Standing> standings = new TreeMap<>();

  ApprovalWords(Publication publication) {
    this.publication = publication;
    this.fingerprints = SignedFacts.fingerprints(publication.unit());
  }

  /**
   * The words for an edition of a card that shows these things. They describe the day on which the
   * edition was issued, so that an unchanged edition keeps its words.
   */
  List<String> of(List<? extends Thing> things, Editions.Edition edition) {
    if (publication.draft()) {
      return List.of(publication.words().say("card.unsigned"));
    }
    Standing then =
        standings.computeIfAbsent(
            edition.since(), day -> Standing.of(publication.unit(), day, fingerprints));
    List<SignatureStanding> signed =
        things.stream().flatMap(each -> then.signaturesOf(each.id()).stream()).toList();
    boolean all =
        signed.size() == things.size()
            && signed.stream().allMatch(each -> each.missing().isEmpty());
    return all ? approved(signed, edition) : List.of(publication.words().say("card.unsigned"));
  }

  private List<String> approved(List<SignatureStanding> signed, Editions.Edition edition) {
    Set<String> roles = new LinkedHashSet<>();
    List<LocalDate> dates = new ArrayList<>();
    for (SignatureStanding each : signed) {
      for (Wanted wanted : each.wanted()) {
        roles.add(Sentence.within(wanted.role().value().title()));
        wanted.given().map(Signature::date).ifPresent(date -> dates.add(date.value()));
      }
    }
    String day =
        dates.stream()
            .max(Comparator.naturalOrder())
            .map(latest -> Dates.day(latest, publication.words()))
            .orElse("");
    List<String> words = new ArrayList<>();
    words.add(publication.words().say("card.approved", day, String.join(", ", roles)));
    edition
        .review()
        .or(() -> earliestReview(signed))
        .ifPresent(
            review ->
                words.add(
                    publication.words().say("review.by", Dates.day(review, publication.words()))));
    return words;
  }

  private static Optional<LocalDate> earliestReview(List<SignatureStanding> signed) {
    return signed.stream()
        .map(SignatureStanding::reviewBy)
        .flatMap(Optional::stream)
        .min(Comparator.naturalOrder());
  }
}
