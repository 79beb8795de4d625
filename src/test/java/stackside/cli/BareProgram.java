package stackside.cli;

import java.io.IOException;
import java.lang.management.ManagementFactory;
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

/**
 * The bare program of the benchmark: writes the bytes of a draft from values that another process
 * has made ready, and prints the processor milliseconds that reading those values took.
 */
public final class BareProgram {
  private BareProgram() {}

  /** {@code BareProgram VALUES FOLDER}, or {@code BareProgram CONTENT VALUES DAY} before it. */
  public static void main(String[] arguments) throws Exception {
    Locale.setDefault(Locale.ROOT);
    if (arguments.length == 3) {
      prepare(Path.of(arguments[0]), LocalDate.parse(arguments[2])).save(Path.of(arguments[1]));
    } else {
      long before = cpu();
      PreparedPages prepared = PreparedPages.load(Path.of(arguments[0]));
      System.out.println(cpu() - before);
      prepared.write(Path.of(arguments[1]));
    }
  }

  private static long cpu() {
    return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
            .getProcessCpuTime()
        / 1_000_000;
  }

  private static PreparedPages prepare(Path content, LocalDate day) throws IOException {
    Judged judged = Judged.of(content, new LocalDisk(), day);
    Publication trial = publication(judged, day);
    List<CardPlan> plans = CardPlanner.plans(trial);
    RenderedCards cards = CardRenderer.render(trial, plans);
    Judged whole =
        judged.with(cards.problems()).with(CardRules.judge(trial, plans, cards.printed()));
    return PreparedPages.of(publication(whole, day), plans);
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
