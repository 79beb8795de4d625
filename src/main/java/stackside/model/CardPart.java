package stackside.model;

import java.util.List;
import stackside.source.Location;

/**
 * One of several settings cards of a room, such as "lower" or "upper": it holds the answers for
 * some sites.
 *
 * @param lesions the lesions on this card; an empty list means all that the room offers at the
 *     sites
 */
public record CardPart(
    Location at,
    Fact<String> name,
    @AtLeastOne List<Fact<SiteChoice>> sites,
    List<Fact<Lesion>> lesions) {

  public CardPart {
    if (!name.value().matches("[a-z0-9]+([ -][a-z0-9]+)*") || name.value().length() > 30) {
      throw new UnreadableText(
          "'" + name.value() + "' is not a valid card name",
          "use small letters and digits, as in 'lower' or 'left colon'");
    }
    sites = List.copyOf(sites);
    lesions = List.copyOf(lesions);
  }

  /** Whether an answer for this lesion at this site belongs on the card. */
  public boolean holds(Lesion lesion, Site site) {
    boolean here =
        sites.stream()
            .flatMap(choice -> choice.value().sites().stream())
            .anyMatch(each -> each.id().equals(site.id()));
    return here
        && (lesions.isEmpty()
            || lesions.stream().anyMatch(each -> each.value().id().equals(lesion.id())));
  }
}
