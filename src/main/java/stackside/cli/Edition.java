package stackside.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.render.Marking;
import stackside.render.OutputFile;
import stackside.render.Publication;
import stackside.render.card.CardRenderer;
import stackside.render.card.RenderedCards;
import stackside.render.plan.CardPlan;
import stackside.render.plan.CardPlanner;
import stackside.render.site.OwnTemplates;
import stackside.render.site.SiteRenderer;

/**
 * The files of one edition, with what was found wrong on the way to them.
 *
 * @param files none where the unit itself could not be read
 */
record Edition(Judged judged, List<OutputFile> files) {

  Edition {
    files = List.copyOf(files);
  }

  /** Renders a preview. */
  static Edition draft(Judged judged, LocalDate on, OwnTemplates templates, Progress progress) {
    Optional<Analysis> analysis = judged.analysis();
    return analysis.isEmpty()
        ? new Edition(judged, List.of())
        : rendered(judged, analysis.get(), on, templates, progress);
  }

  private static Publication publication(Judged judged, Analysis analysis, LocalDate on) {
    return new Publication(analysis, judged.problems(), Faults.all(), Marking.DRAFT, on);
  }

  private static Edition rendered(
      Judged judged, Analysis analysis, LocalDate on, OwnTemplates templates, Progress progress) {
    progress.stage("painting the cards");
    Publication first = publication(judged, analysis, on);
    List<CardPlan> plans = CardPlanner.plans(first);
    RenderedCards cards = CardRenderer.render(first, plans);
    Judged whole = judged.with(cards.problems());
    progress.stage("writing the pages");
    List<OutputFile> files =
        new ArrayList<>(SiteRenderer.render(publication(whole, analysis, on), plans, templates));
    files.addAll(cards.files());
    return new Edition(whole, files);
  }
}
