package stackside.render.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stackside.derive.coverage.Cell;
import stackside.model.Asset;
import stackside.model.Fact;
import stackside.model.PatientGroup;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.render.site.Part.Grid;

/** Every question that the rooms raise, with its answer or the word gap; no cell is empty. */
final class CoveragePage implements Pages {

  @Override
  public Stream<Page> of(Website site) {
    PageContext here = site.at("coverage.html");
    List<Section> sections = new ArrayList<>();
    sections.add(here.section("coverage-counts", counts(here)));
    for (Room room : site.unit().rooms()) {
      for (Fact<Asset> asset : room.assets()) {
        for (Fact<PatientGroup> patients : room.patients()) {
          table(room, asset.value(), patients.value(), here).ifPresent(sections::add);
        }
      }
    }
    return Stream.of(
        new PlainPage(
            here.frame(here.say("menu.coverage")),
            "coverage",
            Optional.of(RichLine.of(here.say("coverage.lead"))),
            sections));
  }

  private static Part counts(PageContext here) {
    int all = here.site().analysis().coverage().cells().size();
    int gaps = here.site().analysis().coverage().gaps().size();
    int ambiguous = here.site().analysis().coverage().ambiguous().size();
    return new Part.Say(RichLine.of(here.say("coverage.counts", all, gaps, ambiguous)));
  }

  private static Optional<Section> table(Room room, Asset asset, PatientGroup patients, PageContext here) {
    List<Cell> cells =
        here.site().analysis().coverage().of(room, asset).stream()
            .filter(cell -> cell.patients().id().equals(patients.id()))
            .toList();
    if (cells.isEmpty()) {
      return Optional.empty();
    }
    Set<stackside.model.Site> sites = new LinkedHashSet<>();
    cells.forEach(cell -> sites.add(cell.site()));
    Map<String, List<Cell>> rows = new LinkedHashMap<>();
    cells.forEach(
        cell ->
            rows.computeIfAbsent(
                    cell.lesion().id() + " " + cell.step().id(), any -> new ArrayList<>())
                .add(cell));
    String heading =
        here.say(
            "coverage.heading",
            room.title(),
            asset.machine().value().title(),
            asset.title(),
            patients.title());
    List<String> head = new ArrayList<>();
    head.add(here.say("column.lesion-step"));
    sites.forEach(site -> head.add(site.title()));
    return Optional.of(
        new Section(
            room.id().slug() + "-" + asset.id().slug() + "-" + patients.id().slug(),
            heading,
            List.of(
                new Grid(
                        heading,
                        head,
                        rows.values().stream().map(row -> row(row, sites, here)).toList())
                    .byColumn())));
  }

  private static Grid.GridRow row(List<Cell> cells, Set<stackside.model.Site> sites, PageContext here) {
    Cell first = cells.get(0);
    List<RichLine> lines = new ArrayList<>();
    for (stackside.model.Site site : sites) {
      lines.add(
          cells.stream()
              .filter(cell -> cell.site().id().equals(site.id()))
              .findFirst()
              .map(cell -> answer(cell, here))
              .orElse(RichLine.of(TextPiece.quiet(here.say("coverage.not-offered")))));
    }
    return new Grid.GridRow(
        Optional.empty(), RichLine.of(first.lesion().title() + ": " + first.step().title()), lines);
  }

  private static RichLine answer(Cell cell, PageContext here) {
    Optional<Profile> profile = cell.cover().answer();
    if (profile.isEmpty()) {
      return Covers.status(cell.cover(), here);
    }
    RichLine status = Covers.status(cell.cover(), here);
    TextPiece word = status.pieces().get(0);
    return RichLine.of(
        new TextPiece(
            word.text(),
            Optional.of(here.to(Answers.page(cell.room(), profile.get()))),
            word.shape(),
            word.style()));
  }
}
