package stackside.cli;

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

  private static PreparedPages prepare(Path content, LocalDate day) throws Exception {
    LocalDisk disk = new LocalDisk();
    CheckedContent read = CheckedContent.of(content, disk, day, day);
    Path site = Path.of("site");
    LastIssue last = LastIssue.beside(disk, site, site, read);
    Editions editions = Editions.drafts(last.register(), day);
    CheckedContent judged = last.compared(read);
    Publication trial = publication(judged, editions, day);
    List<CardPlan> plans = CardPlanner.plans(trial);
    RenderedCards cards = CardRenderer.render(trial, plans);
    CheckedContent whole =
        judged.with(cards.problems()).with(CardRules.judge(trial, plans, cards.printed()));
    return PreparedPages.of(publication(whole, editions, day), plans);
  }

  private static Publication publication(CheckedContent judged, Editions editions, LocalDate day) {
    return new Publication(
        judged.analysis().orElseThrow(),
        judged.problems(),
        Faults.all(),
        Marking.DRAFT,
        editions,
        judged.approvals(),
        day);
  }
}
