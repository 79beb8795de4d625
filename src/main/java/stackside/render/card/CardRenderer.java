package stackside.render.card;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import stackside.render.OutputFile;
import stackside.render.Publication;
import stackside.render.plan.CardPlan;
import stackside.render.plan.CardPlanner;
import stackside.render.plan.LetterHeights;
import stackside.render.plan.Phrase;
import stackside.render.plan.TypeScale;
import stackside.source.Problem;

/**
 * Prints card plans as PDF, one page each. If a card cannot be printed as planned, its page says
 * so; a page that lacks a row is never printed.
 */
public final class CardRenderer {

  private final Publication publication;
  private final LetterHeights letters = LetterHeights.measured();
  private final TypeScale scale;

  private CardRenderer(Publication publication) {
    this.publication = publication;
    this.scale = TypeScale.of(publication.unit().details().readingDistance());
  }

  /** All cards of an edition. */
  public static RenderedCards render(Publication publication) {
    return render(publication, CardPlanner.plans(publication));
  }

  /** The cards of these plans. */
  public static RenderedCards render(Publication publication, List<CardPlan> plans) {
    CardRenderer renderer = new CardRenderer(publication);
    List<Painted> painted = plans.parallelStream().map(renderer::card).toList();
    return new RenderedCards(
        painted.stream().map(Painted::file).toList(),
        painted.stream().filter(each -> each.problems().isEmpty()).map(Painted::file).toList(),
        painted.stream().flatMap(each -> each.problems().stream()).distinct().sorted().toList());
  }

  /** A finished file, and the reasons why it could not be printed as planned. */
  private record Painted(OutputFile file, List<Problem> problems) {}

  private Painted card(CardPlan plan) {
    Typeface typeface = Typeface.forDocument(plan.name());
    CardStyle setting = new CardStyle(typeface, letters, scale);
    CardPage page = new CardPage(plan, setting);
    List<Problem> found = new ArrayList<>(page.problems());
    if (page.overflow() > 0) {
      found.add(Overflow.of(plan, page));
    }
    CardDocument document = document(plan, typeface);
    byte[] bytes =
        found.isEmpty()
            ? document.bytes(page::paint)
            : document.bytes(new UnprintableCard(plan, found, setting)::paint);
    return new Painted(new OutputFile(plan.path(), bytes), found);
  }

  /** The date in the finished file; an edition keeps its own. */
  private LocalDate bears(CardPlan plan) {
    return publication.draft()
        ? publication.on()
        : publication.editions().of(plan.name(), publication.on()).since();
  }

  private CardDocument document(CardPlan plan, Typeface typeface) {
    String title = plan.room().title() + ", " + plan.asset().title() + ": " + plan.title();
    String said = plan.phrases().map(Phrase::words).collect(Collectors.joining("\n"));
    return new CardDocument(
        title,
        publication.unit().details().language().value(),
        bears(plan),
        said + plan.fingerprint().text(),
        typeface);
  }
}
