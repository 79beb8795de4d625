package stackside.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import stackside.derive.coverage.Cell;
import stackside.model.PatientGroup;
import stackside.model.Site;
import stackside.model.Unit;

/**
 * Puts the sites and patients of several questions into words: as groups, where that is shorter.
 */
final class Places {
  private Places() {}

  /** {@code at 'Caecum' and 'Rectum' for adult; at 'Duodenum' for adult and child}. */
  static String of(Unit unit, List<Cell> cells) {
    Map<Site, List<PatientGroup>> patients = new LinkedHashMap<>();
    for (Cell cell : cells) {
      List<PatientGroup> groups = patients.computeIfAbsent(cell.site(), site -> new ArrayList<>());
      if (!groups.contains(cell.patients())) {
        groups.add(cell.patients());
      }
    }
    Map<List<PatientGroup>, List<Site>> sites = new LinkedHashMap<>();
    patients.forEach(
        (site, groups) -> sites.computeIfAbsent(groups, it -> new ArrayList<>()).add(site));
    return sites.entrySet().stream()
        .map(entry -> "at " + sites(unit, entry.getValue()) + people(unit, entry.getKey()))
        .collect(Collectors.joining("; "));
  }

  private static String people(Unit unit, List<PatientGroup> groups) {
    boolean all = groups.size() == unit.details().patients().size();
    return all
        ? ""
        : " for " + Wording.list(groups.stream().map(it -> Wording.small(it.title())).toList());
  }

  private static String sites(Unit unit, List<Site> sites) {
    return unit.siteGroups().stream()
        .filter(group -> Set.copyOf(group.sites()).equals(Set.copyOf(sites)))
        .findFirst()
        .map(Wording::quoted)
        .orElseGet(() -> Wording.few(sites.stream().map(Wording::quoted).toList(), "sites"));
  }
}
