package stackside.model;

import java.util.List;
import stackside.source.Location;

/** Lesions that a room treats, and the sites where it treats them. */
public record Offer(
    Location at, @AtLeastOne List<Fact<Lesion>> lesions, @AtLeastOne List<Fact<SiteChoice>> sites) {
  public Offer {
    lesions = List.copyOf(lesions);
    sites = List.copyOf(sites);
  }

  /** The single sites of the offer, each once, in the order written. */
  public List<Site> allSites() {
    return sites.stream().flatMap(choice -> choice.value().sites().stream()).distinct().toList();
  }
}
