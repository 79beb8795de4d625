package stackside.render.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import stackside.Units;
import stackside.model.HandbookPage;
import stackside.model.Profile;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.render.Links;
import stackside.render.OutputFile;

/**
 * Every page of the demonstration: links, anchors, headings, ids, marks, and no external requests.
 */
final class SiteStructureTest {
  private static final Map<String, Document> PAGES = new HashMap<>();

  @BeforeAll
  static void readPages() {
    PAGES.putAll(pages(DemonstrationSite.files()));
    assertThat(PAGES).hasSizeGreaterThan(200);
  }

  private static Map<String, Document> pages(List<OutputFile> files) {
    Map<String, Document> pages = new HashMap<>();
    for (OutputFile file : files) {
      if (file.path().endsWith(".html")) {
        pages.put(file.path(), Jsoup.parse(new String(file.bytes(), StandardCharsets.UTF_8), ""));
      }
    }
    return pages;
  }

  @Test
  void everyLinkLeadsToAFileAndEveryAnchorIsThere() {
    assertThat(brokenLinks(DemonstrationSite.files())).isEmpty();
  }

  /** Links on pages that lead to missing files or anchors. */
  static List<String> brokenLinks(List<OutputFile> files) {
    Map<String, Document> pages = pages(files);
    Set<String> paths = new TreeSet<>();
    files.forEach(file -> paths.add(file.path()));
    List<String> broken = new ArrayList<>();
    pages.forEach(
        (path, page) ->
            page.select("a[href], link[href], script[src], img[src]")
                .forEach(
                    element -> {
                      if (!leadsSomewhere(path, target(element), pages, paths)) {
                        broken.add(path + " -> " + target(element));
                      }
                    }));
    return broken;
  }

  private static String target(Element element) {
    return element.hasAttr("href") ? element.attr("href") : element.attr("src");
  }

  private static boolean leadsSomewhere(
      String from, String href, Map<String, Document> pages, Set<String> paths) {
    if (href.startsWith("https:") || href.equals("data:,")) {
      return true;
    }
    String[] parts = href.split("#", 2);
    String to = parts[0].isEmpty() ? from : resolve(from, parts[0]);
    Document page = pages.get(to);
    boolean anchored = parts.length < 2 || page == null || page.getElementById(parts[1]) != null;
    return paths.contains(to) && anchored;
  }

  private static String resolve(String from, String href) {
    return java.net.URI.create("file:///" + from).resolve(href).getPath().substring(1);
  }

  @Test
  void noTableHasTwoColumnsOfOneName() {
    assertThat(PAGES)
        .allSatisfy(
            (path, page) ->
                assertThat(page.select("thead tr"))
                    .as(path)
                    .allSatisfy(
                        head -> assertThat(head.select("th").eachText()).doesNotHaveDuplicates()));
  }

  /** On a phone, the head is shown beside each cell. */
  @Test
  void everyCellOfAFoldedTableNamesItsColumn() {
    assertThat(PAGES.get("rooms/room-2.html").select(".fold tbody tr")).isNotEmpty();
    PAGES.forEach(
        (path, page) ->
            page.select(".fold table")
                .forEach(
                    table ->
                        assertThat(table.select("tbody tr"))
                            .as(path)
                            .allSatisfy(
                                row ->
                                    assertThat(row.children().eachAttr("data-head"))
                                        .isEqualTo(table.select("thead th").eachText()))));
  }

  @Test
  void everyPageIsReachedFromTheStartPage() {
    Set<String> reached = new TreeSet<>(Set.of("index.html"));
    Deque<String> next = new ArrayDeque<>(reached);
    while (!next.isEmpty()) {
      for (String to : pagesLinkedFrom(next.remove(), "a[href]")) {
        if (reached.add(to)) {
          next.add(to);
        }
      }
    }
    assertThat(reached).containsExactlyInAnyOrderElementsOf(PAGES.keySet());
  }

  /** Menu and foot are on every page, so their links do not count. */
  @Test
  void noPageIsADeadEnd() {
    assertThat(PAGES.keySet())
        .allSatisfy(
            path ->
                assertThat(pagesLinkedFrom(path, "main :not(.trail) a[href]"))
                    .as(path)
                    .isNotEmpty());
  }

  /** The other pages that the links of a page lead to. */
  private static Set<String> pagesLinkedFrom(String path, String links) {
    Set<String> linked = new TreeSet<>();
    for (Element link : PAGES.get(path).select(links)) {
      String href = link.attr("href").split("#", 2)[0];
      if (!href.isEmpty() && !href.startsWith("https:")) {
        String to = resolve(path, href);
        if (PAGES.containsKey(to) && !to.equals(path)) {
          linked.add(to);
        }
      }
    }
    return linked;
  }

  @Test
  void everyPageOfAThingListsWhatMentionsIt() {
    Unit unit = Units.demonstration();
    Mentions mentions = Mentions.of(unit);
    int seen = 0;
    for (Thing thing : unit.things().toList()) {
      Links.Address target = Links.to(thing.id());
      if (target.anchor().isEmpty()) {
        Set<String> listed = pagesLinkedFrom(target.page(), "#mentions a[href], #used a[href]");
        for (ThingId other : mentions.of(thing.id())) {
          assertThat(listed).as(target.page()).contains(Links.to(other).page());
          seen++;
        }
      }
    }
    assertThat(seen).isGreaterThan(200);
  }

  /** A link in a thing's own words counts as a mention, whoever found it. */
  @Test
  void theThingsThatAPageOfTheHandbookLinksToLinkBack() {
    int seen = 0;
    for (HandbookPage page : Units.demonstration().handbook()) {
      String path = Links.to(page.id()).page();
      for (String to : pagesLinkedFrom(path, ".prose > p a[href], .prose > * > li a[href]")) {
        if (to.contains("/")) {
          assertThat(pagesLinkedFrom(to, "main a[href]")).as(path + " -> " + to).contains(path);
          seen++;
        }
      }
    }
    assertThat(seen).isGreaterThan(10);
  }

  @Test
  void theSearchLibraryIsSmall() {
    assertThat(DemonstrationSite.files())
        .filteredOn(file -> file.path().equals("assets/minisearch.js"))
        .singleElement()
        .satisfies(file -> assertThat(file.bytes().length).isLessThan(100 * 1024));
  }

  @Test
  void everyPageHasOneTitleAndHeadingsInOrder() {
    PAGES.forEach(
        (path, page) -> {
          assertThat(page.select("h1")).as(path).hasSize(1);
          int before = 1;
          for (Element heading : page.select("h1, h2, h3, h4, h5, h6")) {
            int level = heading.tagName().charAt(1) - '0';
            assertThat(level).as(path + ": " + heading.text()).isLessThanOrEqualTo(before + 1);
            assertThat(heading.text()).as(path).isNotBlank();
            before = level;
          }
        });
  }

  @Test
  void idsAreUniqueOnAPage() {
    PAGES.forEach(
        (path, page) ->
            assertThat(page.select("[id]").eachAttr("id")).as(path).doesNotHaveDuplicates());
  }

  @Test
  void noTwoPagesHaveTheSameTitle() {
    assertThat(PAGES.values().stream().map(Document::title)).doesNotHaveDuplicates();
  }

  @Test
  void nothingIsLoadedFromOutside() {
    PAGES.forEach(
        (path, page) -> {
          assertThat(page.select("[src], link[href]"))
              .as(path)
              .allSatisfy(element -> assertThat(target(element)).doesNotContain("://"));
          assertThat(page.select("style, [style], [onclick], script:not([src])"))
              .as(path)
              .isEmpty();
          assertThat(page.select("meta[http-equiv=Content-Security-Policy]").attr("content"))
              .as(path)
              .contains("default-src 'none'")
              .doesNotContain("unsafe");
        });
  }

  @Test
  void everyPageSaysDraftAndDemonstrationAndDefersToPolicy() {
    PAGES.forEach(
        (path, page) -> {
          assertThat(page.select(".marks").text())
              .as(path)
              .contains("DRAFT")
              .contains("DEMONSTRATION");
          assertThat(page.select(".cautions").text())
              .as(path)
              .contains("unit's policy")
              .contains("manufacturer's instructions")
              .contains("local codes")
              .contains("licensed practice");
          assertThat(page.select("html").attr("lang")).as(path).isEqualTo("en-GB");
        });
  }

  @Test
  void noCellOfATableIsEmpty() {
    PAGES.forEach(
        (path, page) ->
            assertThat(page.select("td, th"))
                .as(path)
                .allSatisfy(cell -> assertThat(cell.text()).isNotBlank()));
  }

  @Test
  void everyTableNamesItsColumnsAndRows() {
    PAGES.forEach(
        (path, page) ->
            page.select("table")
                .forEach(
                    table -> {
                      assertThat(table.select("thead th[scope=col]")).as(path).isNotEmpty();
                      int columns = table.select("thead th").size();
                      table
                          .select("tbody tr")
                          .forEach(
                              row ->
                                  assertThat(row.children())
                                      .as(path + ": " + row.text())
                                      .hasSize(columns));
                    }));
  }

  @Test
  void everyDrawingHasATitleADescriptionAndATable() {
    PAGES.forEach(
        (path, page) -> {
          assertThat(page.select("svg.drawing"))
              .as(path)
              .allSatisfy(
                  drawing -> {
                    assertThat(drawing.selectFirst("title").text()).isNotBlank();
                    assertThat(drawing.selectFirst("desc").text()).isNotBlank();
                  });
          assertThat(page.select("figure.drawn:has(.wide)"))
              .as(path)
              .allSatisfy(
                  figure ->
                      assertThat(
                              figure.select("table").size()
                                  + stepsBeside(figure)
                                  + tableBelow(figure))
                          .isOne());
        });
  }

  /** A handbook figure has its table open below it. */
  private static int tableBelow(Element figure) {
    Element below = figure.nextElementSibling();
    return below != null && below.is(".prose ~ .scroll") ? below.select("table").size() : 0;
  }

  /** A flow chart says the same as the list of steps on its page. */
  private static int stepsBeside(Element figure) {
    return figure.parent().id().equals("chart")
        ? figure.ownerDocument().select("#checks ol.steps").size()
        : 0;
  }

  @Test
  void noPlaceholderIsLeftInTheWords() {
    PAGES.forEach(
        (path, page) ->
            assertThat(page.text())
                .as(path)
                .doesNotContain("Optional[")
                .doesNotContain("Optional.empty")
                .doesNotContain("{0}")
                .doesNotContain("[pieces=")
                .doesNotContain("null"));
  }

  @Test
  void whatToMindStandsBeforeAllThatIsSet() {
    List<Profile> minded =
        Units.demonstration().profiles().stream()
            .filter(profile -> profile.caution().isPresent())
            .toList();
    assertThat(minded).hasSizeGreaterThan(5);
    for (Profile profile : minded) {
      String caution = profile.caution().orElseThrow().plain().strip();
      List<String> found = answersWith(profile.id().slug());
      assertThat(found).as(profile.title()).hasSizeGreaterThan(1);
      for (String answer : found) {
        String before = answer.split("\\d W\\b|Dial|Unassigned|unassigned", 2)[0];
        assertThat(before).contains(caution);
      }
    }
  }

  /**
   * What pages say about an answer: its own page, its pages in rooms, its entries in the choosers.
   */
  private static List<String> answersWith(String slug) {
    List<String> found = new ArrayList<>();
    PAGES.forEach(
        (path, page) -> {
          if (path.equals("profiles/" + slug + ".html")
              || path.matches("answers/[^/]+/" + slug + "\\.html")) {
            found.add(page.select("main").text());
          }
          page.select("ul.answers > li:has(a[href$=/" + slug + ".html])")
              .forEach(answer -> found.add(answer.text()));
        });
    return found.stream().map(words -> words.replace('\u00a0', ' ')).toList();
  }
}
