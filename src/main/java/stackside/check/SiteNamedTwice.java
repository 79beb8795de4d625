package stackside.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.model.Fact;
import stackside.model.Site;
import stackside.model.SiteChoice;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds sites that one list names twice, once in a group and once more. */
final class SiteNamedTwice implements Rule {
  private static final Fault FAULT =
      new Fault("site-named-twice", Severity.WARNING, "a list names the same site twice");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    Unit unit = analysis.unit();
    List<Problem> found = new ArrayList<>();
    unit.siteGroups().forEach(group -> check(group.of(), found));
    unit.profiles().forEach(profile -> check(profile.sites(), found));
    unit.rooms().stream()
        .flatMap(room -> room.offers().stream())
        .forEach(offer -> check(offer.sites(), found));
    return found;
  }

  private static void check(List<? extends Fact<? extends SiteChoice>> sites, List<Problem> found) {
    for (int i = 1; i < sites.size(); i++) {
      check(sites.subList(0, i), sites.get(i), found);
    }
  }

  private static void check(
      List<? extends Fact<? extends SiteChoice>> before,
      Fact<? extends SiteChoice> choice,
      List<Problem> found) {
    for (Site site : choice.value().sites()) {
      Optional<? extends Fact<? extends SiteChoice>> first =
          before.stream().filter(it -> it.value().sites().contains(site)).findFirst();
      if (first.isPresent()) {
        found.add(problem(choice, site, first.orElseThrow().value()));
        return;
      }
    }
  }

  private static Problem problem(Fact<? extends SiteChoice> again, Site site, SiteChoice first) {
    String where = first.id().equals(site.id()) ? "" : ", as part of " + Wording.quoted(first);
    return FAULT
        .at(again.at(), Wording.quoted(site) + " is already in this list" + where)
        .help("keep one of the two; or was another site meant?");
  }
}
