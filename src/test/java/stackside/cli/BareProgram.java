package stackside.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import stackside.derive.edition.Editions;
import stackside.inspect.CardRules;
import stackside.publish.LocalDisk;
import stackside.render.Marking;
import stackside.render.Publication;
import stackside.render.card.CardRenderer;
import stackside.render.card.RenderedCards;
import stackside.render.plan.CardPlan;
import stackside.render.plan.CardPlanner;
import stackside.render.site.PreparedPages;

/** The bare program of the benchmark: prints the processor milliseconds that it needs itself. */
public final class BareProgram {
  private BareProgram() {}

  /** {@code BareProgram CONTENT FOLDER DAY}; without arguments it only starts and ends. */
  public static void main(String[] arguments) throws Exception {
    Locale.setDefault(Locale.ROOT);
    if (arguments.length == 0) {
      return;
    }
    LocalDate day = LocalDate.parse(arguments[2]);
    Judged judged = Judged.of(Path.of(arguments[0]), new LocalDisk(), day);
    Publication trial = publication(judged, day);
    List<CardPlan> plans = CardPlanner.plans(trial);
    RenderedCards cards = CardRenderer.render(trial, plans);
    Judged whole =
        judged.with(cards.problems()).with(CardRules.judge(trial, plans, cards.printed()));
    PreparedPages prepared = PreparedPages.of(publication(whole, day), plans);
    System.out.println(prepared.write(Path.of(arguments[1])));
  }

  private static Publication publication(Judged judged, LocalDate day) {
    return new Publication(
        judged.analysis().orElseThrow(),
        judged.problems(),
        Faults.all(),
        Marking.DRAFT,
        Editions.none(),
        day);
  }
}
