package stackside.render.site;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import stackside.render.OutputFile;
import stackside.render.Publication;
import stackside.render.card.CardRenderer;
import stackside.render.card.RecordRenderer;
import stackside.render.plan.CardPlan;

/**
 * What a bare program would do that has every value ready: fill the same templates with the same
 * page records, paint the same card plans with the same PDF library, write the same bytes. Values
 * are made beforehand and not counted; what remains is the floor under a draft.
 */
public final class PreparedPages {
  private final Site site;
  private final List<Page> pages;
  private final Publication publication;
  private final List<CardPlan> plans;

  private PreparedPages(Site site, Publication publication, List<CardPlan> plans) {
    this.site = site;
    this.pages = SiteRenderer.pages(site).toList();
    this.publication = publication;
    this.plans = plans;
  }

  /** Makes all values, uncounted. */
  public static PreparedPages of(Publication publication, List<CardPlan> plans) {
    Publication worded = OwnTemplates.none().worded(publication);
    return new PreparedPages(new Site(worded, plans), worded, plans);
  }

  /** Renders and writes everything; answers the processor milliseconds of the process for it. */
  public long write(Path folder) throws IOException {
    long before = cpu();
    Templates templates = new Templates(OwnTemplates.none());
    List<OutputFile> files = new ArrayList<>();
    files.addAll(OutOfUse.marked(pages.stream().map(templates::fill).toList(), site, templates));
    files.addAll(Furniture.files(templates));
    files.add(SearchIndex.of(site));
    files.addAll(CardRenderer.render(publication, plans).files());
    files.addAll(RecordRenderer.render(publication));
    for (OutputFile file : files) {
      Path path = folder.resolve(file.path());
      Files.createDirectories(path.getParent());
      Files.write(path, file.bytes());
    }
    return cpu() - before;
  }

  private static long cpu() {
    return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
            .getProcessCpuTime()
        / 1_000_000;
  }
}
