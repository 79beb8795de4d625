package stackside.render.site;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import stackside.derive.edition.CardEntry;
import stackside.render.OutputFile;
import stackside.render.Publication;
import stackside.render.plan.CardPlan;

/** Makes all pages of the site folder, with style sheet, scripts and fonts. */
public final class SiteRenderer {
  private static final List<Pages> ALL =
      List.of(
          new StartPage(),
          new ChooserPages(),
          new RoomPages(),
          new AssetPages(),
          new MachinePages(),
          new ModePages(),
          new ProfilePages(),
          new AnatomyPages(),
          new PlugInPages(),
          new DrillPages(),
          new CoveragePage(),
          new FailureSignPages(),
          new DifferencePages(),
          new GlossaryPage(),
          new StandingPage(),
          new DuePage(),
          new CardPages(),
          new SearchPage(),
          new ReadingPages(),
          new ClaimsPage(),
          new SelfCheckPages(),
          new PracticePages(),
          new ExplorerPages(),
          new UnitPages(),
          new RulePages(),
          new StubPages());

  private SiteRenderer() {}

  /** All files of the site, in the unit's own look where it has one. */
  public static List<OutputFile> render(Publication publication, List<CardPlan> cards) {
    Templates templates = new Templates(publication.unit());
    Website site = new Website(publication, cards);
    List<OutputFile> files = new ArrayList<>();
    List<OutputFile> pages = pages(site).parallel().map(templates::fill).toList();
    files.addAll(OutOfUse.marked(pages, site, templates));
    files.addAll(StaticAssets.files(templates));
    files.add(SearchIndex.of(site));
    files.sort(Comparator.comparing(OutputFile::path));
    return List.copyOf(files);
  }

  static Stream<Page> pages(Website site) {
    return ALL.stream().flatMap(each -> each.of(site));
  }

  /**
   * The files of a site after a withdrawal. Pages that say which cards are in use are made again,
   * pages about withdrawn things get a notice, and all others stay the same.
   */
  public static List<OutputFile> renderAfterWithdrawal(
      Publication publication, Collection<OutputFile> hanging, List<CardEntry> down) {
    Templates templates = new Templates(publication.unit());
    Website site = new Website(publication, List.of());
    SortedMap<String, OutputFile> files = new TreeMap<>();
    OutOfUse.marked(hanging, site, templates).forEach(file -> files.put(file.path(), file));
    RegisterPages.afterWithdrawal(site, down)
        .map(templates::fill)
        .forEach(file -> files.put(file.path(), file));
    return List.copyOf(files.values());
  }
}
