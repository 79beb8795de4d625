package stackside.render.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import stackside.derive.figure.Explored;
import stackside.quantity.Amperes;

/**
 * Self-checks, drills to walk through, paths, the explorer and the sheets to print, from {@code
 * file://} and by keyboard alone.
 */
final class InductionTest {
  private static final String CHECK = "self-checks/room-2--EQ-0417.html";
  private static final String WALK = "practice/no-effect.html";
  private static final String NURSE = "paths/nurse.html";

  @TempDir private static Path temporary;
  private static Path site;
  private static Browser browser;

  @BeforeAll
  static void openBrowser() throws IOException {
    browser = Browser.open();
    site = Browser.write(temporary, DemonstrationSite.files());
    browser.show(site, "index.html");
    browser.driver().executeScript("localStorage.clear()");
  }

  @AfterAll
  static void closeBrowser() {
    if (browser != null) {
      browser.close();
    }
  }

  private static WebElement one(String selector) {
    return browser.driver().findElement(By.cssSelector(selector));
  }

  private static List<WebElement> all(String selector) {
    return browser.driver().findElements(By.cssSelector(selector));
  }

  private static WebElement focused() {
    return browser.driver().switchTo().activeElement();
  }

  /** Presses Tab until the element has the focus, as somebody without a mouse would. */
  private static void tabTo(String selector) {
    WebElement wanted = one(selector);
    for (int presses = 0; presses < 80; presses++) {
      if (focused().equals(wanted)) {
        return;
      }
      focused().sendKeys(Keys.TAB);
    }
    throw new AssertionError("the keyboard never comes to " + selector);
  }

  private static void withoutScripts(Runnable look) {
    Map<String, Object> off = Map.of("value", true);
    browser.driver().executeCdpCommand("Emulation.setScriptExecutionDisabled", off);
    try {
      look.run();
    } finally {
      Map<String, Object> on = Map.of("value", false);
      browser.driver().executeCdpCommand("Emulation.setScriptExecutionDisabled", on);
    }
  }

  // Self-checks

  @Test
  void aSelfCheckIsAnsweredByKeyboardAndRemembered() {
    browser.show(site, CHECK);
    browser.driver().executeScript("localStorage.clear()");
    browser.show(site, CHECK);
    assertThat(one(".score").getText()).startsWith("0 of ");

    tabTo("#question-1 [data-reply=wrong] button");
    focused().sendKeys(Keys.ENTER);
    assertThat(one("#question-1 .said").getText()).startsWith("Not here. It is right in Room");
    assertThat(one("#question-1 .said").getAttribute("role")).isEqualTo("status");
    assertThat(one("#question-1 details").getAttribute("open")).isNull();
    assertThat(one(".score").getText()).startsWith("0 of ");

    focused().sendKeys(Keys.chord(Keys.SHIFT, Keys.TAB));
    assertThat(focused()).isEqualTo(one("#question-1 [data-reply=right] button"));
    focused().sendKeys(Keys.SPACE);
    assertThat(one("#question-1 .said").getText()).isEqualTo("Right.");
    assertThat(one("#question-1 details").getAttribute("open")).isNotNull();
    assertThat(all("#question-1 details a")).isNotEmpty();
    assertThat(one(".score").getText()).startsWith("1 of ");

    browser.show(site, CHECK);
    assertThat(one(".score").getText()).startsWith("1 of ");
  }

  @Test
  void aSelfCheckWorksWhereNothingCanBeKept() {
    browser.show(site, CHECK);
    browser
        .driver()
        .executeScript(
            "Storage.prototype.setItem = function () { throw new Error('full'); };"
                + " Storage.prototype.getItem = function () { throw new Error('none'); };");
    WebElement right = one("#question-1 [data-reply=right] button");
    right.sendKeys(Keys.ENTER);
    assertThat(one("#question-1 .said").getText()).isEqualTo("Right.");
  }

  @Test
  void withoutScriptsTheAnswersUnfold() {
    withoutScripts(
        () -> {
          browser.show(site, CHECK);
          assertThat(all(".replies button")).isEmpty();
          assertThat(all(".replies li").size()).isGreaterThan(20);
          WebElement summary = one("#question-1 summary");
          summary.sendKeys(Keys.ENTER);
          assertThat(one("#question-1 details strong").isDisplayed()).isTrue();
        });
  }

  @Test
  void noQuestionOffersTheSameWordsTwice() {
    List<String> twice = new ArrayList<>();
    DemonstrationSite.pages().stream()
        .filter(page -> page.path().startsWith("self-checks/"))
        .forEach(
            page ->
                org.jsoup.Jsoup.parse(
                        new String(page.bytes(), java.nio.charset.StandardCharsets.UTF_8))
                    .select(".question")
                    .forEach(
                        question -> {
                          Set<String> seen = new HashSet<>();
                          question.select("[data-reply]").stream()
                              .filter(
                                  item -> !seen.add(item.text().toLowerCase(java.util.Locale.ROOT)))
                              .forEach(item -> twice.add(page.path() + ": " + item.text()));
                          assertThat(question.select("[data-reply=right]")).hasSize(1);
                          assertThat(question.select("details a[href]")).isNotEmpty();
                        }));
    assertThat(twice).isEmpty();
  }

  // Drills

  @Test
  void aDrillIsWalkedByKeyboardAndReadOut() {
    browser.show(site, WALK);
    assertThat(shown(".walk > li")).isOne();
    tabTo(".walk-next");
    focused().sendKeys(Keys.ENTER);
    assertThat(shown(".walk > li")).isOne();
    assertThat(one(".walk-said").getAttribute("role")).isEqualTo("status");
    assertThat(one(".walk-said").getAttribute("textContent"))
        .startsWith("Step 2 of ")
        .contains("Foot off. Hold the snare still.");
    focused().sendKeys(Keys.ARROW_RIGHT);
    assertThat(one(".walk-said").getAttribute("textContent")).startsWith("Step 3 of ");
    focused().sendKeys(Keys.ARROW_LEFT);
    assertThat(one(".walk-said").getAttribute("textContent")).startsWith("Step 2 of ");
    for (int i = 0; i < 20; i++) {
      focused().sendKeys(Keys.ARROW_RIGHT);
    }
    assertThat(one(".walk > li:not([hidden])").getText()).contains("ext. 4410");
    assertThat(
            browser
                .driver()
                .executeScript(
                    "return JSON.parse(localStorage['stackside-induction'])['drill no-effect']"))
        .isEqualTo("walked");
    assertThat(sizeOf(".walk > li:not([hidden]) .do")).isGreaterThan(24);
  }

  @Test
  void theClockRunsOnlyWhenAsked() throws InterruptedException {
    browser.show(site, WALK);
    assertThat(one(".walk-time").isDisplayed()).isFalse();
    tabTo(".walk-clock");
    focused().sendKeys(Keys.SPACE);
    assertThat(one(".walk-time").isDisplayed()).isTrue();
    Thread.sleep(2200);
    assertThat(one(".walk-time").getText()).matches("[2-4] s");
    focused().sendKeys(Keys.SPACE);
    assertThat(one(".walk-clock").getAttribute("aria-pressed")).isEqualTo("false");
  }

  @Test
  void withoutScriptsADrillIsAList() {
    withoutScripts(
        () -> {
          browser.show(site, WALK);
          assertThat(shown(".walk > li")).isEqualTo(all(".walk > li").size()).isGreaterThan(5);
          assertThat(one(".walk-bar").isDisplayed()).isFalse();
        });
  }

  private static long shown(String selector) {
    return all(selector).stream().filter(WebElement::isDisplayed).count();
  }

  private static double sizeOf(String selector) {
    return Double.parseDouble(one(selector).getCssValue("font-size").replace("px", ""));
  }

  // Paths

  @Test
  void whatWasReadIsTickedByKeyboardAndRemembered() {
    browser.show(site, NURSE);
    browser.driver().executeScript("localStorage.clear()");
    browser.show(site, NURSE);
    String before = one(".path-left").getText();
    assertThat(before).matches("22 still to read, about \\d+ minutes.*");
    tabTo("ol.reads li:first-child input");
    focused().sendKeys(Keys.SPACE);
    assertThat(one(".path-left").getText()).startsWith("21 still to read");
    browser.show(site, NURSE);
    assertThat(one("ol.reads li:first-child input").isSelected()).isTrue();
    assertThat(one(".path-left").getText()).startsWith("21 still to read");
  }

  @Test
  void aPathSaysHowLongItTakesWithoutScripts() {
    withoutScripts(
        () -> {
          browser.show(site, NURSE);
          assertThat(one(".lead").getText()).containsPattern("About \\d+ minutes in all");
          assertThat(shown("ol.reads input")).isZero();
        });
  }

  // The explorer

  @Test
  void theExplorerIsMovedByKeyboard() {
    browser.show(site, "explorer.html");
    String before = one("[data-result=loop]").getText();
    tabTo("[name=loop]");
    focused().sendKeys(Keys.ARROW_LEFT);
    assertThat(one("output[for=explore-loop]").getText()).isEqualTo("4 mm");
    assertThat(one("[data-result=loop]").getText()).isNotEqualTo(before);
    assertThat(one("main").getText()).contains("For learning only");
  }

  @Test
  void theExplorerWorksOutWhatTheProgramDoes() {
    browser.show(site, "explorer.html");
    int compared = 0;
    for (double current : new double[] {0.05, 0.2, 0.7, 1.35, 2}) {
      for (double loop : new double[] {1, 2, 5, 13, 30}) {
        for (double pad : new double[] {1, 7, 10, 20}) {
          for (double time : new double[] {1, 10, 60}) {
            Map<?, ?> script =
                (Map<?, ?>)
                    browser
                        .driver()
                        .executeScript(
                            "return stacksideInduction.explored(...arguments)",
                            current,
                            loop,
                            pad,
                            time);
            Explored java = Explored.of(new Amperes(current), loop, pad, time);
            close(script, "loop", java.loop());
            close(script, "pad", java.pad());
            close(script, "heating", java.heating());
            close(script, "factor", java.factor());
            compared++;
          }
        }
      }
    }
    assertThat(compared).isEqualTo(300);
  }

  private static void close(Map<?, ?> script, String name, double java) {
    assertThat(((Number) script.get(name)).doubleValue())
        .as(name)
        .isCloseTo(java, within(java * 1e-12));
  }

  // Paper

  @Test
  @Tag("thorough")
  void everyComparisonOfTwoRoomsPrintsOnOneSheet() throws IOException {
    int sheets = 0;
    for (var page : DemonstrationSite.pages()) {
      if (page.path().startsWith("differences/")) {
        browser.show(site, page.path());
        assertThat(printedPages()).as(page.path()).isLessThanOrEqualTo(2);
        sheets++;
      }
    }
    assertThat(sheets).isEqualTo(42);
  }

  private static int printedPages() throws IOException {
    String pdf =
        (String)
            browser
                .driver()
                .executeCdpCommand(
                    "Page.printToPDF", Map.of("preferCSSPageSize", true, "printBackground", false))
                .get("data");
    try (var document =
        org.apache.pdfbox.Loader.loadPDF(java.util.Base64.getDecoder().decode(pdf))) {
      return document.getNumberOfPages();
    }
  }
}
