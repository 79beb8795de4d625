package stackside.derive.guidance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.model.Fact;
import stackside.model.Lesion;
import stackside.model.LesionKind;
import stackside.model.LesionShape;
import stackside.model.Profile;
import stackside.model.Site;
import stackside.model.Step;
import stackside.model.Tract;
import stackside.model.Unit;
import stackside.quantity.Band;
import stackside.quantity.Millimetres;

/**
 * A preferred answer with current where published guidance recommends a cold snare: primary
 * resection of a non-pedunculated colorectal polyp under 10 mm, or of a serrated one of any size.
 */
public record ColdSnareQuestion(
    Profile profile, Lesion lesion, Site site, List<Recommendation> recommendations) {

  private static final Millimetres SMALL = new Millimetres(10);
  private static final Millimetres DIMINUTIVE = new Millimetres(6);

  public ColdSnareQuestion {
    recommendations = List.copyOf(recommendations);
  }

  /** The published recommendation behind a question. */
  public enum Recommendation {
    /** Up to 5 mm: ESGE 2024, Endoscopy 2024;56:516, recommendation 1; also USMSTF 2020. */
    DIMINUTIVE,
    /** 6 to 9 mm: ESGE 2024, recommendation 3; also USMSTF 2020. */
    SMALL,
    /** Serrated, no dysplasia suspected, any size: ESGE 2024, recommendation 7. */
    SERRATED
  }

  /** All such answers of a unit, each profile and lesion once. */
  public static List<ColdSnareQuestion> of(Unit unit) {
    List<ColdSnareQuestion> questions = new ArrayList<>();
    for (Profile profile : unit.profiles()) {
      if (profile.settings().isPresent() && profile.preferred()) {
        for (Fact<Lesion> lesion : profile.lesions()) {
          ask(profile, lesion.value()).ifPresent(questions::add);
        }
      }
    }
    return questions;
  }

  private static Optional<ColdSnareQuestion> ask(Profile profile, Lesion lesion) {
    List<Recommendation> recommendations = recommendations(lesion);
    if (recommendations.isEmpty() || !isPrimary(profile.step().value(), lesion)) {
      return Optional.empty();
    }
    return profile.allSites().stream()
        .filter(site -> site.tract().value() == Tract.LOWER)
        .findFirst()
        .map(site -> new ColdSnareQuestion(profile, lesion, site, recommendations));
  }

  /** Whether this step removes the polyp: the step named so, or else the lesion's first. */
  private static boolean isPrimary(Step step, Lesion lesion) {
    List<Step> steps = lesion.steps().stream().map(Fact::value).toList();
    Optional<Step> primary =
        steps.stream()
            .filter(each -> each.id().slug().equals("resection"))
            .findFirst()
            .or(() -> steps.stream().findFirst());
    return primary.stream().anyMatch(each -> each.id().equals(step.id()));
  }

  private static List<Recommendation> recommendations(Lesion lesion) {
    boolean flat = lesion.shape().stream().anyMatch(s -> s.value() == LesionShape.NON_PEDUNCULATED);
    if (!flat || !isPolyp(lesion)) {
      return List.of();
    }
    List<Recommendation> found = new ArrayList<>();
    lesion
        .size()
        .map(Fact::value)
        .filter(ColdSnareQuestion::isSmall)
        .ifPresent(
            size -> {
              if (size.overlaps(under(DIMINUTIVE))) {
                found.add(Recommendation.DIMINUTIVE);
              }
              if (size.overlaps(new Band<>(Optional.of(DIMINUTIVE), Optional.of(SMALL)))) {
                found.add(Recommendation.SMALL);
              }
            });
    if (lesion.kind().stream().anyMatch(kind -> kind.value() == LesionKind.SERRATED)) {
      found.add(Recommendation.SERRATED);
    }
    return found;
  }

  private static boolean isSmall(Band<Millimetres> size) {
    return under(SMALL).covers(size);
  }

  private static Band<Millimetres> under(Millimetres size) {
    return new Band<>(Optional.empty(), Optional.of(size));
  }

  private static boolean isPolyp(Lesion lesion) {
    return lesion
        .kind()
        .map(
            kind ->
                switch (kind.value()) {
                  case ADENOMA, SERRATED -> true;
                  case VASCULAR, SCAR, ULCER, STRICTURE, PAPILLA -> false;
                })
        .orElse(true);
  }
}
