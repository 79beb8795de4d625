package stackside.render.site;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import stackside.Units;
import stackside.check.ContentRules;
import stackside.content.ReadingFaults;
import stackside.derive.Analysis;
import stackside.model.Unit;
import stackside.render.Marking;
import stackside.render.OutputFile;
import stackside.render.Publication;
import stackside.render.card.CardRenderer;
import stackside.render.card.RecordRenderer;
import stackside.render.plan.CardPlan;
import stackside.render.plan.CardPlanner;
import stackside.source.Fault;

/** The pages of units for tests; the demonstration's are made only once. */
final class DemonstrationSite {
  static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final List<OutputFile> FILES = render(Units.demonstration(), Marking.DRAFT);

  private DemonstrationSite() {}

  static List<OutputFile> files() {
    return FILES;
  }

  static List<OutputFile> pages() {
    return FILES.stream().filter(file -> file.path().endsWith(".html")).toList();
  }

  static List<OutputFile> render(Unit unit, Marking marking) {
    Publication publication = publication(unit, marking);
    List<CardPlan> plans = CardPlanner.plans(publication);
    return Stream.of(
            SiteRenderer.render(publication, plans),
            CardRenderer.render(publication, plans).files(),
            RecordRenderer.render(publication))
        .flatMap(List::stream)
        .sorted(Comparator.comparing(OutputFile::path))
        .toList();
  }

  static Publication publication(Unit unit, Marking marking) {
    Analysis analysis = Analysis.of(unit);
    List<Fault> faults =
        Stream.concat(ContentRules.catalogue().faults().stream(), ReadingFaults.all().stream())
            .toList();
    return new Publication(analysis, ContentRules.judge(analysis, DAY), faults, marking, DAY);
  }
}
