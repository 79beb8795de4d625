package stackside.check;

import static stackside.check.Rule.error;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.derive.coverage.Cell;
import stackside.model.Machine;
import stackside.model.PatientGroup;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.model.Sentence;
import stackside.model.Site;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.source.Location;

/** Whether each question that a room offers has one answer. */
final class CoverageRules {

  /** One lesion and step, with all machines, places and rooms where it has no answer. */
  private record Hole(List<Cell> cells) {
    Cell first() {
      return cells.get(0);
    }

    List<Room> rooms() {
      return cells.stream().map(Cell::room).distinct().toList();
    }

    List<Site> sites() {
      return cells.stream().map(Cell::site).distinct().toList();
    }

    /** Whether the lesion has an answer at some other site of the same offer. */
    boolean isPartOfOffer() {
      return sites().size() < first().offer().allSites().size();
    }

    String question() {
      return "%s (%s)"
          .formatted(Wording.quoted(first().lesion()), Sentence.within(first().step().title()));
    }
  }

  private CoverageRules() {}

  static List<Rule<CheckedUnit>> rules() {
    return List.of(
        error(
            "coverage-gap",
            "a room offers something that has no answer",
            CoverageRules::coverageGap),
        error(
            "ambiguous-answer",
            "two preferred answers apply at once",
            CoverageRules::ambiguousAnswer));
  }

  /**
   * Leaves a gap beside a doubled answer to {@code ambiguous-answer}: one wrong word makes both, so
   * they are one mistake.
   */
  private static List<Finding> coverageGap(CheckedUnit checked) {
    Unit unit = checked.unit();
    List<Hole> holes =
        gaps(checked.analysis()).stream()
            .collect(
                Collectors.groupingBy(
                    CoverageRules::questionOf, LinkedHashMap::new, Collectors.toList()))
            .values()
            .stream()
            .map(Hole::new)
            .toList();
    Stream<Finding> single =
        holes.stream().filter(hole -> !hole.isPartOfOffer()).map(hole -> coverageGap(unit, hole));
    Stream<Finding> atOnePlace =
        holes.stream()
            .filter(Hole::isPartOfOffer)
            .collect(Collectors.groupingBy(Hole::sites, LinkedHashMap::new, Collectors.toList()))
            .values()
            .stream()
            .map(same -> same.size() == 1 ? coverageGap(unit, same.get(0)) : coverageGap(same));
    return Stream.concat(single, atOnePlace).toList();
  }

  private static List<Cell> gaps(Analysis analysis) {
    List<Profile> doubled =
        analysis.coverage().ambiguous().stream()
            .flatMap(cell -> cell.cover().preferred().stream())
            .distinct()
            .toList();
    return analysis.coverage().gaps().stream()
        .filter(
            gap ->
                doubled.stream()
                    .filter(
                        it -> analysis.unit().machinesIn(gap.room()).contains(it.machine().value()))
                    .noneMatch(it -> gap.missedByOneThing(analysis.unit(), it)))
        .toList();
  }

  private static List<ThingId> questionOf(Cell cell) {
    return List.of(cell.lesion().id(), cell.step().id());
  }

  private static Finding coverageGap(Unit unit, Hole hole) {
    Cell first = hole.first();
    List<Machine> machines = hole.cells().stream().map(Cell::machine).distinct().toList();
    Finding finding =
        Finding.at(
            offered(first),
            "%s %s no answer for %s %s, which %s"
                .formatted(
                    Wording.quoted(machines),
                    machines.size() == 1 ? "has" : "have",
                    hole.question(),
                    places(unit, hole.cells()),
                    Wording.quoted(hole.rooms())
                        + (hole.rooms().size() == 1 ? " offers" : " offer")));
    for (Profile alternative : first.cover().alternatives()) {
      finding =
          finding.note(
              alternative.at(), "this is an alternative, but there is no preferred answer");
    }
    return finding.help(
        "add a profile: settings, cold, or not approved; or remove it from what the room offers");
  }

  /** Several gaps at one place count as one mistake: a site is missing from a list or a group. */
  private static Finding coverageGap(List<Hole> same) {
    Cell first = same.get(0).first();
    return Finding.at(
            offered(first),
            "at %s there are %s questions without an answer; the first is %s on %s"
                .formatted(
                    Wording.quoted(same.get(0).sites()),
                    same.size(),
                    same.get(0).question(),
                    Wording.quoted(first.machine())))
        .note(same.get(0).sites().get(0).at(), "the site")
        .help("add the site to the lists or the group that it was left out of");
  }

  private static Location offered(Cell cell) {
    return cell.offer().lesions().stream()
        .filter(it -> it.value().id().equals(cell.lesion().id()))
        .findFirst()
        .orElseThrow()
        .at();
  }

  private static List<Finding> ambiguousAnswer(CheckedUnit checked) {
    return checked.analysis().coverage().ambiguous().stream()
        .collect(
            Collectors.groupingBy(
                cell -> cell.cover().preferred().stream().map(Profile::id).toList(),
                LinkedHashMap::new,
                Collectors.toList()))
        .values()
        .stream()
        .map(cells -> ambiguousAnswer(checked.analysis(), cells))
        .toList();
  }

  private static Finding ambiguousAnswer(Analysis analysis, List<Cell> cells) {
    Cell cell = cells.get(0);
    List<Profile> preferred = cell.cover().preferred();
    Profile first = preferred.get(0);
    Profile last = preferred.get(preferred.size() - 1);
    Finding finding =
        Finding.at(
                last.at(),
                "profile '%s' answers the same question as '%s': %s (%s) %s"
                    .formatted(
                        last.id().slug(),
                        first.id().slug(),
                        Wording.quoted(cells.stream().map(Cell::lesion).toList()),
                        Sentence.within(cell.step().title()),
                        places(analysis.unit(), cells)))
            .note(first.at(), "the other preferred answer");
    Optional<Cell> gap = gapBeside(analysis, cell);
    return gap.map(it -> finding.note(it.offer().at(), "nothing answers " + words(it)))
        .orElse(finding)
        .help(
            gap.isPresent()
                ? "correct the lesion, site, step or patients of the profile that was meant for it"
                : "remove the overlap from one, or make it an 'alternative' that says when it applies");
  }

  private static String words(Cell gap) {
    return "%s (%s) at %s for %s on %s"
        .formatted(
            Wording.quoted(gap.lesion()),
            Sentence.within(gap.step().title()),
            Wording.quoted(gap.site()),
            Sentence.within(gap.patients().title()),
            Wording.quoted(gap.machine()));
  }

  private static Optional<Cell> gapBeside(Analysis analysis, Cell cell) {
    return analysis.coverage().gaps().stream()
        .filter(gap -> analysis.unit().machinesIn(gap.room()).contains(cell.machine()))
        .filter(
            gap ->
                cell.cover().preferred().stream()
                    .anyMatch(it -> gap.missedByOneThing(analysis.unit(), it)))
        .findFirst();
  }

  /** {@code at 'Caecum' and 'Rectum' for adult; at 'Duodenum' for adult and child}. */
  private static String places(Unit unit, List<Cell> cells) {
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
        : " for " + Wording.list(groups.stream().map(it -> Sentence.within(it.title())).toList());
  }

  private static String sites(Unit unit, List<Site> sites) {
    return unit.siteGroups().stream()
        .filter(group -> Set.copyOf(group.sites()).equals(Set.copyOf(sites)))
        .findFirst()
        .map(Wording::quoted)
        .orElseGet(() -> Wording.few(sites.stream().map(Wording::quoted).toList(), "sites"));
  }
}
