package stackside.check;

import java.util.ArrayList;
import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Fact;
import stackside.model.Lesion;
import stackside.model.Offer;
import stackside.model.Room;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds lesions that a room offers twice at one site. */
final class LesionOfferedTwice implements Rule {
  private static final Fault FAULT =
      new Fault(
          "lesion-offered-twice",
          Severity.WARNING,
          "a room offers a lesion twice at the same site");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    List<Problem> found = new ArrayList<>();
    for (Room room : analysis.unit().rooms()) {
      for (int i = 1; i < room.offers().size(); i++) {
        check(room.offers().subList(0, i), room.offers().get(i), found);
      }
    }
    return found;
  }

  private static void check(List<Offer> before, Offer offer, List<Problem> found) {
    for (Fact<Lesion> lesion : offer.lesions()) {
      before.stream()
          .filter(
              it -> it.lesions().stream().anyMatch(l -> l.value().id().equals(lesion.value().id())))
          .flatMap(it -> it.allSites().stream())
          .filter(offer.allSites()::contains)
          .findFirst()
          .ifPresent(
              site ->
                  found.add(
                      FAULT
                          .at(
                              lesion.at(),
                              "%s at %s is already offered further up"
                                  .formatted(Wording.quoted(lesion.value()), Wording.quoted(site)))
                          .help("keep one of the two; or was another lesion or site meant?")));
    }
  }
}
