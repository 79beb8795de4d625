package stackside.render.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The demonstration's pages in a browser, from the disk: accessible, whole, by keyboard alone. */
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
  void theSearchFindsSynonymsSignsAndNumbersByKeyboard() {
    assertThat(firstFound("tone but nothing happens")).contains("No effect");
    assertThat(found("return electrode")).contains("Split plate adult");
    assertThat(found("esophagus")).contains("Oesophagus");
    assertThat(firstFound("EQ-0417")).contains("EQ-0417");
    assertThat(found("cold snare")).contains("Cold");
    assertThat(found("zzzz")).isEmpty();
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
