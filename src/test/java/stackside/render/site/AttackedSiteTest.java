package stackside.render.site;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import stackside.Units;
import stackside.content.Reading;
import stackside.generate.AttackUnit;
import stackside.model.Unit;
import stackside.render.Marking;
import stackside.render.OutputFile;

/**
 * The site of a unit in which every text is an attack. Nothing in it runs, and nothing contacts
 * another machine.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class AttackedSiteTest {
  private static final int PAGES_OF_A_KIND = 2;

  /** Our own icon, so that no browser requests one. */
  private static final String NO_ICON = "data:,";

  private final ConcurrentLinkedQueue<String> asked = new ConcurrentLinkedQueue<>();
  private HttpServer server;
  private List<OutputFile> files = List.of();
  private Path site;

  @BeforeAll
  void build(@TempDir Path temporary) throws IOException {
    server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.createContext(
        "/",
        exchange -> {
          asked.add(exchange.getRequestURI().toString());
          exchange.sendResponseHeaders(404, -1);
          exchange.close();
        });
    server.start();
    Path content = temporary.resolve("content");
    AttackUnit.write(content, "http://127.0.0.1:" + server.getAddress().getPort());
    Reading reading = Units.reading(content);
    Unit unit = reading.unit().orElseThrow();
    assertThat(unit.rooms()).as(Units.printed(reading)).isNotEmpty();
    assertThat(unit.profiles()).as(Units.printed(reading)).isNotEmpty();
    files = DemonstrationSite.render(unit, Marking.DRAFT);
    site = Browser.write(temporary, files);
  }

  @AfterAll
  void stop() {
    server.stop(0);
  }

  private List<OutputFile> pages() {
    return files.stream().filter(file -> file.path().endsWith(".html")).toList();
  }

  @Test
  void noPageHoldsAnythingThatRunsOrAsksElsewhere() {
    int attacks = 0;
    for (OutputFile page : pages()) {
      Document document =
          Jsoup.parse(new String(page.bytes(), StandardCharsets.UTF_8), "http://here.example/");
      assertThat(document.select("script:not([src])")).as(page.path()).isEmpty();
      assertThat(
              document.select(
                  "style,iframe,object,embed,form:not(#search-form),base,meta[http-equiv=refresh]"))
          .as(page.path())
          .isEmpty();
      for (Element element : document.getAllElements()) {
        for (Attribute attribute : element.attributes()) {
          isHarmless(page.path(), element, attribute);
        }
      }
      attacks += document.text().split("window\\.attacked", -1).length - 1;
    }
    System.out.println(
        "attacked site: " + pages().size() + " pages, " + attacks + " attacks shown as words");
    assertThat(attacks).isGreaterThan(1000);
  }

  private static void isHarmless(String page, Element element, Attribute attribute) {
    String what = page + ": " + element.tagName() + " " + attribute;
    assertThat(attribute.getKey()).as(what).doesNotStartWith("on");
    if (List.of("href", "src", "xlink:href", "action", "data", "srcset")
        .contains(attribute.getKey())) {
      assertThat(attribute.getValue().strip().toLowerCase(java.util.Locale.ROOT))
          .as(what)
          .doesNotStartWith("javascript:")
          .matches(value -> value.equals(NO_ICON) || !value.startsWith("data:"))
          .doesNotStartWith("http://127");
    }
  }

  @Test
  void cardsHoldNoActions() throws IOException {
    for (OutputFile card : files.stream().filter(file -> file.path().endsWith(".pdf")).toList()) {
      try (PDDocument document = Loader.loadPDF(card.bytes())) {
        assertThat(document.getDocumentCatalog().getOpenAction()).as(card.path()).isNull();
        assertThat(document.getDocumentCatalog().getNames()).as(card.path()).isNull();
        for (PDPage page : document.getPages()) {
          assertThat(page.getAnnotations()).as(card.path()).isEmpty();
        }
      }
    }
  }

  @Test
  @Tag("thorough")
  void inTheBrowserNoScriptRunsAndNoRequestLeaves() {
    Map<String, List<String>> kinds = new LinkedHashMap<>();
    for (OutputFile page : pages()) {
      String folder = page.path().replaceAll("[^/]*$", "").replaceAll("^(c|answers)/.*", "$1/");
      kinds
          .computeIfAbsent(folder.isEmpty() ? page.path() : folder, any -> new ArrayList<>())
          .add(page.path());
    }
    int opened = 0;
    try (Browser browser = Browser.open()) {
      for (List<String> pages : kinds.values()) {
        for (String page : pages.subList(0, Math.min(PAGES_OF_A_KIND, pages.size()))) {
          browser.show(site, page);
          staysInert(browser, page);
          opened++;
        }
      }
      browser.show(site, "search.html");
      browser.driver().switchTo().activeElement().sendKeys("script");
      staysInert(browser, "search.html");
    }
    assertThat(asked).isEmpty();
    System.out.println("attacked site: " + opened + " pages opened, no script ran, none asked");
    assertThat(opened).isGreaterThan(50);
  }

  /**
   * Checks after every element has been hovered and focused, as far as events can simulate that.
   */
  private static void staysInert(Browser browser, String page) {
    Object found =
        browser
            .driver()
            .executeScript(
                """
                for (const each of document.querySelectorAll('*')) {
                  for (const event of ['mouseover', 'focus', 'error', 'load']) {
                    if (each.getAttribute('on' + event)) { return 'handler on ' + each.tagName; }
                  }
                }
                const away = performance.getEntriesByType('resource')
                  .map(entry => entry.name).filter(name => !name.startsWith('file:'));
                return window.attacked ? 'a script ran' : away.join(' ');
                """);
    assertThat(found).as(page).isEqualTo("");
    assertThat(browser.driver().getCurrentUrl()).as(page).startsWith("file:");
  }
}
