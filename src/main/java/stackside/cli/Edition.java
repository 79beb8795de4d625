package stackside.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.derive.edition.Editions;
import stackside.inspect.CardRules;
import stackside.render.Marking;
import stackside.render.OutputFile;
import stackside.render.Publication;
import stackside.render.card.CardRenderer;
import stackside.render.card.RecordRenderer;
import stackside.render.card.RenderedCards;
import stackside.render.plan.CardPlan;
import stackside.render.plan.CardPlanner;
import stackside.render.site.SiteRenderer;

/**
 * The files of one preview, with what was found wrong on the way to them.
 *
 * @param files none where the unit itself could not be read
 */
record Edition(CheckedContent judged, List<OutputFile> files) {

  Edition {
    files = List.copyOf(files);
  }

  /** Renders a preview. */
  static Edition draft(CheckedContent judged, Editions editions, LocalDate on, Progress progress) {
    Optional<Analysis> analysis = judged.analysis();
    return analysis.isEmpty()
        ? new Edition(judged, List.of())
        : rendered(judged, publication(judged, analysis.get(), editions, on), progress);
  }

  private static Publication publication(
      CheckedContent judged, Analysis analysis, Editions editions, LocalDate on) {
    return new Publication(
        analysis, judged.problems(), Faults.all(), Marking.DRAFT, editions, judged.approvals(), on);
  }

  private static Edition rendered(
      CheckedContent judged, Publication publication, Progress progress) {
    progress.stage("painting the cards");
    List<CardPlan> plans = CardPlanner.plans(publication);
    RenderedCards cards = CardRenderer.render(publication, plans);
    progress.stage("reading the cards back");
    CheckedContent whole =
        judged.with(cards.problems()).with(CardRules.judge(publication, plans, cards.printed()));
    progress.stage("writing the pages");
    Publication told =
        publication(whole, publication.analysis(), publication.editions(), publication.on());
    List<OutputFile> files = new ArrayList<>(SiteRenderer.render(told, plans));
    files.addAll(cards.files());
    files.addAll(RecordRenderer.render(told));
    return new Edition(whole, files);
  }
}
