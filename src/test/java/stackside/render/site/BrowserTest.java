package stackside.render.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/**
 * The demonstration's pages in a browser, opened from the disk: accessible, complete, and usable by
 * keyboard alone.
 */
final class BrowserTest {
  @TempDir private static Path temporary;
  private static Path site;
  private static Browser browser;

  @BeforeAll
  static void openBrowser() throws IOException {
    browser = Browser.open();
    site = Browser.write(temporary, DemonstrationSite.files());
  }

  @AfterAll
  static void closeBrowser() {
    if (browser != null) {
      browser.close();
    }
  }

  @Test
  void theFontOfTheSiteIsInUse() {
    browser.show(site, "index.html");
    Object loaded =
        browser
            .driver()
            .executeAsyncScript(
                "const done = arguments[0]; document.fonts.ready.then(() =>"
                    + " done([...document.fonts].filter(f => f.status === 'loaded').length))");
    assertThat((Long) loaded).isEqualTo(2L);
  }

  @Test
  void theChooserLeadsFromRoomToAnswerByKeyboard() {
    browser.size(390, 800);
    browser.show(site, "choose.html");
    press("main .picks a", "Room 2");
    assertThat(browser.driver().getCurrentUrl()).endsWith("choose/room-2.html");
    assertThat(shown(".site")).isZero();

    press("#pick-site a", "Rectum");
    assertThat(shown(".site")).isOne();
    assertThat(shown(".lesion")).isZero();
    assertThat(browser.driver().switchTo().activeElement().getText()).isEqualTo("Rectum");

    press("#rectum .lesions a", "");
    assertThat(shown(".lesion")).isOne();
    assertThat(shown(".lesions")).isZero();

    String address = browser.driver().getCurrentUrl();
    browser.show(site, "index.html");
    browser.driver().get(address);
    assertThat(shown(".lesion")).isOne();
    assertThat(shown("#pick-site")).isZero();

    press(".lesion:not([hidden]) .answer-step a", "");
    assertThat(browser.driver().getCurrentUrl()).contains("answers/room-2/");

    browser.driver().navigate().back();
    assertThat(shown(".lesion")).isOne();

    browser.show(site, "choose.html");
    assertThat(browser.driver().findElement(By.cssSelector("main .picks a")).getText())
        .contains("Room 2");
  }

  /** Presses Enter on the first link with these words. */
  private static void press(String selector, String words) {
    browser.driver().findElements(By.cssSelector(selector)).stream()
        .filter(link -> link.isDisplayed() && link.getText().contains(words))
        .findFirst()
        .orElseThrow()
        .sendKeys(Keys.ENTER);
  }

  private static long shown(String selector) {
    return browser.driver().findElements(By.cssSelector(selector)).stream()
        .filter(WebElement::isDisplayed)
        .count();
  }

  @Test
  void withoutScriptsTheChooserShowsEverything() throws IOException {
    browser
        .driver()
        .executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", true));
    try {
      browser.show(site, "choose/room-2.html");
      long all = browser.driver().findElements(By.cssSelector(".lesion")).size();
      assertThat(all).isGreaterThan(5);
      assertThat(shown(".lesion")).isEqualTo(all);
    } finally {
      browser
          .driver()
          .executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", false));
    }
  }

  @Test
  void withoutScriptsTheSearchPageSaysWhereToLook() {
    browser
        .driver()
        .executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", true));
    try {
      browser.show(site, "search.html");
      assertThat(browser.driver().findElement(By.cssSelector("main")).getText())
          .contains("Search needs scripts.");
      assertThat(shown(".foot li a")).isGreaterThan(10);
    } finally {
      browser
          .driver()
          .executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", false));
    }
  }

  @Test
  void theAnswersSayEverythingForTheHands() {
    browser.show(site, "answers/room-2/cordgrass-flat-resection.html");
    assertThat(browser.driver().findElement(By.cssSelector("main")).getText())
        .contains("Program", "Socket", "Instrument", "Yellow pedal", "Blue pedal")
        .contains("Return plate", "Technique", "Evidence", "Set up, and when it fails")
        .containsPattern("On the card\\s+Settings, flat polyps, draft 0.1 of 25.November.2026");
  }

  @ParameterizedTest
  @CsvSource({
    "return electrode, Split plate adult",
    "pad, Split plate adult",
    "plate, Split plate adult",
    "dispersive electrode, Split plate adult",
    "oesophagus, Oesophagus",
    "esophagus, Oesophagus",
    "cecum, Caecum",
    "cold snare, Cold",
    "tone but nothing happens, No effect",
    "nothing happens, No effect",
    "plate alarm, Plate alarm",
    "EQ-0417, EQ-0417",
    "eq-0533, EQ-0533",
    "oval snair, Oval snare"
  })
  void theSearchFindsSynonymsSignsNumbersAndMistypedNames(String words, String thing) {
    assertThat(found(words)).contains(thing);
  }

  @Test
  void enterLeadsToTheFirstThingFound() {
    assertThat(firstFound("tone but nothing happens")).contains("No effect");
    assertThat(firstFound("EQ-0417")).contains("EQ-0417");
    browser.driver().switchTo().activeElement().sendKeys(Keys.ENTER);
    assertThat(browser.driver().getCurrentUrl()).endsWith("assets/EQ-0417.html");
  }

  @Test
  void whatIsNowhereIsSaidToBeNowhere() {
    assertThat(found("zzzz")).isEmpty();
    assertThat(browser.driver().findElement(By.id("search-count")).getText())
        .isEqualTo("Nothing found.");
  }

  private static String found(String words) {
    browser.show(site, "search.html");
    browser.driver().switchTo().activeElement().sendKeys(words);
    return browser.driver().findElement(By.id("search-found")).getText();
  }

  private static String firstFound(String words) {
    found(words);
    browser.driver().switchTo().activeElement().sendKeys(Keys.ENTER);
    return browser.driver().switchTo().activeElement().getText();
  }
}
