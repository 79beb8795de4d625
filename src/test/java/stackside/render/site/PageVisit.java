package stackside.render.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * One page in one browser, checked without reloading it. In every look: wide and narrow, light and
 * dark, and printed; all axe-core rules at both widths. Another colour scheme changes only
 * contrast, so only contrast is checked there. As a phone shows it: narrow and light, with all
 * rules.
 */
final class PageVisit {
  private static final String PREPARE = axe() + script("look.js");

  private static final String WIDER = "return stacksideLook.wider()";

  private final Browser browser;
  private final String page;
  private final List<String> found = new ArrayList<>();

  private PageVisit(Browser browser, String page) {
    this.browser = browser;
    this.page = page;
  }

  /** Makes the browser load what the checks need into each page. */
  static void prepare(Browser browser) {
    browser
        .driver()
        .executeCdpCommand("Page.addScriptToEvaluateOnNewDocument", Map.of("source", PREPARE));
  }

  /** Everything that is wrong with a page in any look, one line each. */
  static List<String> inEveryLook(Browser browser, Path site, String page) {
    PageVisit visit = new PageVisit(browser, page);
    browser.look(1280, "screen", "light");
    browser.show(site, page);
    visit.looks();
    return visit.found;
  }

  /** Everything that is wrong with a page as a phone shows it, one line each. */
  static List<String> onAPhone(Browser browser, Path site, String page) {
    PageVisit visit = new PageVisit(browser, page);
    browser.look(390, "screen", "light");
    browser.show(site, page);
    visit.all("light narrow");
    visit.ask("requests from outside", "return stacksideLook.outside()");
    visit.ask("narrow", WIDER);
    return visit.found;
  }

  private void looks() {
    all("light wide");
    ask("requests from outside", "return stacksideLook.outside()");
    browser.look(1280, "screen", "dark");
    contrast("dark wide");
    browser.look(390, "screen", "light");
    all("light narrow");
    ask("narrow", WIDER);
    browser.look(390, "screen", "dark");
    contrast("dark narrow");
    browser.look(320, "screen", "light");
    ask("narrowest", WIDER);
    browser.look(640, "screen", "light");
    ask("at twice the size", WIDER);
    browser.look(1280, "screen", "light");
    ask("with letters of twice the size", "return stacksideLook.largeLetters()");
    printed();
  }

  private void all(String look) {
    axe(look, "stacksideLook.everyRule");
    ask(look, "return stacksideLook.faint()");
  }

  private void contrast(String look) {
    axe(look, "stacksideLook.contrastRules");
    ask(look, "return stacksideLook.faint()");
  }

  private void printed() {
    browser.look(390, "print", "dark");
    Long paper = (Long) browser.driver().executeScript("return stacksideLook.paper()");
    browser.look(paper.intValue(), "print", "dark");
    ask("printed", WIDER);
    ask("printed", "return stacksideLook.faint()");
    ask("printed", "return stacksideLook.hiddenFromPaper()");
  }

  private void ask(String look, String script) {
    tell(look, browser.driver().executeScript(script));
  }

  private void axe(String look, String rules) {
    tell(
        look,
        browser.driver().executeAsyncScript("stacksideLook.axe(" + rules + ").then(arguments[0])"));
  }

  @SuppressWarnings("unchecked")
  private void tell(String look, Object findings) {
    ((List<String>) findings).forEach(each -> found.add(page + ", " + look + ": " + each));
  }

  private static String axe() {
    return resource("/axe/axe.min.js");
  }

  private static String script(String name) {
    return resource("/browser/" + name);
  }

  private static String resource(String name) {
    try (var stream = PageVisit.class.getResourceAsStream(name)) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8) + "\n";
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
