package stackside.render.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import stackside.derive.Analysis;
import stackside.derive.Edited;
import stackside.derive.edition.Editions;
import stackside.derive.signed.Approvals;
import stackside.derive.signed.Ledger;
import stackside.derive.signed.SignedFacts;
import stackside.model.Kind;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.render.Marking;
import stackside.render.OutputFile;
import stackside.render.Publication;

/** The day by which a page must be reviewed: printed, with a warning once it has passed. */
final class ReviewDayTest {
  private static final String PAGE = "profiles/arrowgrass-small.html";
  private static final LocalDate MADE = LocalDate.of(2026, 11, 25);

  /** One answer signed on 1 March 2026, to be reviewed after 12 months. */
  private static Approvals signed(Unit unit) {
    ThingId id = new ThingId(Kind.PROFILE, "arrowgrass-small");
    SignedFacts facts = unit.find(id).flatMap(answer -> SignedFacts.of(unit, answer)).orElseThrow();
    return Approvals.none()
        .with(
            new Ledger.Decision(
                LocalDate.of(2026, 3, 1),
                id,
                Optional.of(facts.fingerprint()),
                facts.fingerprint(),
                "lead-endoscopist",
                "EF"),
            facts.json());
  }

  private static List<OutputFile> site(LocalDate on) {
    Unit unit = Edited.base("");
    return SiteRenderer.render(
        new Publication(
            Analysis.of(unit),
            List.of(),
            List.of(),
            Marking.ISSUED,
            Editions.none(),
            signed(unit),
            on),
        List.of());
  }

  private static Element line(LocalDate on) {
    return Jsoup.parse(SiteRendererTest.text(site(on), PAGE)).selectFirst(".due");
  }

  @Test
  void theDayIsPrintedForThoseWithoutScripts() {
    assertThat(line(MADE).text()).isEqualTo("Review by 1 March 2027.");
    assertThat(line(MADE).classNames()).doesNotContain("overdue");
  }

  @Test
  void aPageThatIsMadeAfterTheDayWarnsAtOnce() {
    Element line = line(LocalDate.of(2027, 3, 2));
    assertThat(line.text()).startsWith("Review overdue: it was due by 1 March 2027.");
    assertThat(line.classNames()).contains("overdue");
  }

  @Test
  void whatNobodySignedHasNoDay() {
    assertThat(Jsoup.parse(SiteRendererTest.text(site(MADE), "rooms/room-1.html")).select(".due"))
        .isEmpty();
  }

  @Test
  void theReadersClockDecides(@TempDir Path temporary) throws IOException {
    Path folder = Browser.write(temporary, site(MADE));
    assertThat(readOn("2027-03-01T23:59:00", folder)).startsWith("due: Review by");
    assertThat(readOn("2027-03-02T00:01:00", folder)).startsWith("due overdue: Review overdue");
  }

  /** The class and the words of the line, for a reader whose clock shows this moment. */
  private static String readOn(String moment, Path folder) {
    try (Browser browser = Browser.open()) {
      browser
          .driver()
          .executeCdpCommand(
              "Page.addScriptToEvaluateOnNewDocument",
              Map.of(
                  "source",
                  "{ const at = Date; Date = function () { return new at('" + moment + "'); }; }"));
      browser.show(folder, PAGE);
      WebElement line = browser.driver().findElement(By.cssSelector(".due"));
      return line.getAttribute("class") + ": " + line.getText();
    }
  }
}
