package stackside.render.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import stackside.cli.Office;
import stackside.derive.edition.CardEntry;

/**
 * Is this card current? Tests what a card's code leads to, in a browser and from the disk: in use,
 * superseded, out of use, overdue for review, unknown; and the same without scripts.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class CardInUseTest {
  private static final LocalDate SOON = LocalDate.of(2026, 11, 30);

  @TempDir private static Path temporary;
  private Office office;
  private Browser browser;
  private String clock = "";

  /**
   * Sets up one card in its second edition, one withdrawn, and the others in their first edition.
   */
  @BeforeAll
  void issueTwiceAndWithdraw() throws Exception {
    browser = Browser.open();
    office = Office.issued(temporary.resolve("A unité"));
    office.edit("profiles/orache.yaml", "{mode: blend, limit: 40 W}", "{mode: blend, limit: 35 W}");
    office.signAll("2026-11-22");
    assertThat(office.run("issue", "--on", "2026-11-23")).as(office.told()).isZero();
    assertThat(office.out)
        .contains(
            "print these: Room A, EQ-0209: Settings, flat polyps, edition 2, 1 copy",
            "settings yellow limit: 40 W → 35 W",
            "take down: Room A, EQ-0209: Settings, flat polyps, edition 1 of 2026-11-21, 1 copy");
    int code =
        office.run(
            "withdraw",
            "room-a-eq-0209-set-up",
            "--reason",
            "Lamp dark",
            "--role",
            "lead-nurse",
            "--initials",
            "NN",
            "--on",
            "2026-11-24");
    assertThat(code).as(office.told()).isZero();
  }

  @AfterAll
  void closeBrowser() {
    if (browser != null) {
      browser.close();
    }
  }

  @AfterEach
  void setTheClockBack() {
    if (!clock.isEmpty()) {
      browser
          .driver()
          .executeCdpCommand(
              "Page.removeScriptToEvaluateOnNewDocument", Map.of("identifier", clock));
      clock = "";
    }
  }

  private CardEntry card(String name) throws Exception {
    return office.register().card(name).orElseThrow();
  }

  /** What the page says about a card with this edition when opened on this day. */
  private List<String> answer(String name, String edition, LocalDate day) throws Exception {
    setTheClockBack();
    String today =
        "{ const Real = Date; Date = class extends Real { constructor(...given) {"
            + " super(...(given.length ? given : [%d, %d, %d])); } }; }"
                .formatted(day.getYear(), day.getMonthValue() - 1, day.getDayOfMonth());
    clock =
        String.valueOf(
            browser
                .driver()
                .executeCdpCommand("Page.addScriptToEvaluateOnNewDocument", Map.of("source", today))
                .get("identifier"));
    browser.driver().get("about:blank");
    Path page = office.site("c/" + card(name).code() + "/index.html");
    browser.driver().get(page.toUri() + (edition.isEmpty() ? "" : "#" + edition));
    return said();
  }

  private List<String> said() {
    return browser.driver().findElements(By.cssSelector(".card-check p")).stream()
        .filter(WebElement::isDisplayed)
        .map(WebElement::getText)
        .map(words -> words.replace('\u00a0', ' '))
        .collect(Collectors.toList());
  }

  private static final String POLYPS = "room-a-eq-0209-settings-flat-polyps";

  @Test
  void cardOfTheEditionInUse_isCurrent() throws Exception {
    assertThat(answer(POLYPS, "2-" + mark(POLYPS), SOON))
        .containsExactly(
            "Your card is edition 2: current.",
            "In use: edition 2, issued 23 November 2026.",
            "A card with any other edition is superseded: take it down and destroy it.",
            "Review by 20 November 2027.",
            "According to this copy of the site, as of the issue of 23 November 2026.");
  }

  @Test
  void cardOfAnEarlierEdition_isToBeTakenDown() throws Exception {
    assertThat(answer(POLYPS, "1", SOON))
        .startsWith(
            "Your card is edition 1: superseded. Take it down and destroy it.",
            "In use: edition 2, issued 23 November 2026.");
  }

  /** Two cards of one number: an older copy of the site folder was put back once. */
  @Test
  void anotherCardOfTheSameNumber_isToldApart() throws Exception {
    for (String other : List.of("2-0000", "2")) {
      assertThat(answer(POLYPS, other, SOON))
          .startsWith(
              "Your card is edition 2, but it is not the card that was issued under that number."
                  + " Take it down and destroy it.");
    }
  }

  private String mark(String name) throws Exception {
    return card(name).fingerprint().substring(0, 4);
  }

  @Test
  void cardOfALaterEditionThanThisCopyKnows_isUnknown() throws Exception {
    assertThat(answer(POLYPS, "3", SOON).get(0))
        .startsWith("Your card is edition 3, which this copy of the site does not know.");
  }

  @Test
  void draft_isToBeTakenDown() throws Exception {
    assertThat(answer(POLYPS, "1.1", SOON)).startsWith("Your card is a draft, 1.1. Take it down.");
  }

  @Test
  void cardAfterItsReviewDate_isOverdue() throws Exception {
    assertThat(answer(POLYPS, "2-" + mark(POLYPS), LocalDate.of(2027, 11, 20)))
        .noneMatch(line -> line.contains("overdue"));
    assertThat(answer(POLYPS, "2-" + mark(POLYPS), LocalDate.of(2027, 11, 21)))
        .startsWith(
            "Your card is edition 2: current.",
            "Review overdue as of today. Ask before relying on this card.");
  }

  @Test
  void withdrawnCard_isOutOfUseWhateverItBears() throws Exception {
    assertThat(answer("room-a-eq-0209-set-up", "1", SOON))
        .containsExactly(
            "Out of use. Take this card down and destroy it, whatever its edition.",
            "Why: Lamp dark (NN)",
            "According to this copy of the site, as of the issue of 24 November 2026.");
  }

  @Test
  void withoutScripts_theEditionInUseStandsThere() throws Exception {
    browser
        .driver()
        .executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", true));
    try {
      browser.show(office.folder.resolve("site"), "c/" + card(POLYPS).code() + "/index.html");
      assertThat(said())
          .startsWith(
              "In use: edition 2, issued 23 November 2026.",
              "A card with any other edition is superseded: take it down and destroy it.");
    } finally {
      browser
          .driver()
          .executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", false));
    }
  }

  @Test
  void codeThatNobodyKnows_isNotAmongAllCodes() throws Exception {
    browser.show(office.folder.resolve("site"), "c/index.html");
    assertThat(browser.driver().findElement(By.cssSelector("main")).getText())
        .contains("A card whose code is not here is unknown", card(POLYPS).code());
  }
}
