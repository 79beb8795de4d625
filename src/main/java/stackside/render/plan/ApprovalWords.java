package stackside.render.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import stackside.derive.edition.Approval;
import stackside.derive.edition.Editions;
import stackside.model.Sentence;
import stackside.render.Dates;
import stackside.render.Publication;

/**
 * Says in the footer who approved the contents of a card, when, and until when the approval lasts.
 */
final class ApprovalWords {

  private final Publication publication;

  ApprovalWords(Publication publication) {
    this.publication = publication;
  }

  /** The words for an edition; an untouched edition keeps them, whoever signs again meanwhile. */
  List<String> of(Editions.Edition edition) {
    return edition
        .approval()
        .filter(approval -> !publication.draft())
        .map(approval -> approved(approval, edition))
        .orElseGet(() -> List.of(publication.words().say("card.unsigned")));
  }

  private List<String> approved(Approval approval, Editions.Edition edition) {
    List<String> words = new ArrayList<>();
    words.add(
        publication
            .words()
            .say(
                "card.approved",
                Dates.day(approval.day(), publication.words()),
                approval.roles().stream().map(this::title).collect(Collectors.joining(", "))));
    edition
        .review()
        .ifPresent(
            review ->
                words.add(
                    publication.words().say("review.by", Dates.day(review, publication.words()))));
    return words;
  }

  private String title(String id) {
    return publication.unit().details().roles().stream()
        .filter(role -> role.id().slug().equals(id))
        .map(role -> Sentence.within(role.title()))
        .findFirst()
        .orElse(id);
  }
}
