package stackside.render.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import stackside.Units;
import stackside.derive.Edited;
import stackside.derive.handbook.Grounds;
import stackside.model.HandbookPage;
import stackside.render.Marking;

/** How a page of the handbook shows its notes, its claims, its words and what the unit adds. */
final class HandbookPagesTest {

  private static Document page(String path) {
    return Jsoup.parse(SiteRendererTest.text(DemonstrationSite.files(), path));
  }

  private static Document base(String patch, String path) {
    return Jsoup.parse(
        SiteRendererTest.text(DemonstrationSite.render(Edited.base(patch), Marking.DRAFT), path));
  }

  private static List<HandbookPage> chapters() {
    return Units.demonstration().handbook().stream().filter(HandbookPage::isChapter).toList();
  }

  @Test
  void everyNoteLeadsToItsClaimAndEveryClaimIsShown() {
    int notes = 0;
    for (HandbookPage chapter : chapters()) {
      Document page = page("handbook/" + chapter.id().slug() + ".html");
      for (Element note : page.select("a.note")) {
        assertThat(page.select(note.attr("href"))).as(chapter.id() + note.text()).hasSize(1);
        notes++;
      }
      assertThat(page.select("ol.claims > li"))
          .as(chapter.id().slug())
          .hasSameSizeAs(Grounds.of(chapter).claims());
      assertThat(page.select("main").text()).doesNotContainPattern("\\[\\d+(, \\d+)*]");
    }
    assertThat(notes).isGreaterThan(200);
  }

  /** Read or recalled stands with the source alone; the note shows what the source says. */
  @Test
  void aNoteOnARecalledSourceSaysSo() {
    Document page = page("handbook/modes.html");
    assertThat(page.select("a.note[href=#note-3]").first().text()).isEqualTo("3, from memory");
    assertThat(page.select("a.note[href=#note-1]").first().text()).isEqualTo("1");
    assertThat(page.select("#note-3").text()).contains("From memory: check it");
    assertThat(page.select("#note-4").text()).doesNotContain("From memory");
  }

  @Test
  void aWordOfTheGlossaryIsLinkedOnce() {
    int terms = 0;
    for (HandbookPage chapter : chapters()) {
      Document page = page("handbook/" + chapter.id().slug() + ".html");
      assertThat(page.select("a.term").eachAttr("href"))
          .as(chapter.id().slug())
          .doesNotHaveDuplicates();
      terms += page.select("a.term").size();
      assertThat(page.select("h2 a, h3 a, a a")).isEmpty();
    }
    assertThat(terms).isGreaterThan(40);
    Document glossary = page("glossary.html");
    for (Element term : page("handbook/neutral-electrode.html").select("a.term")) {
      String anchor = term.attr("href").replaceFirst(".*#", "#");
      assertThat(glossary.select(anchor)).as(anchor).hasSize(1);
    }
  }

  @Test
  void whatTheUnitAddsStandsApartBelowItsOwnHeading() {
    Document page = page("handbook/argon.html");
    Element own = page.select("h3:contains(Our own remarks)").first();
    assertThat(own).isNotNull();
    assertThat(page.select("h2").eachText())
        .containsSubsequence("Remember", "In your room", "Test yourself", "Sources");
    String text = page.select("main").text();
    assertThat(text.indexOf("Argon modes and the rooms"))
        .isLessThan(text.indexOf("Our own remarks"));
    assertThat(text.indexOf("Our own remarks")).isLessThan(text.indexOf("Test yourself"));
    assertThat(text).contains("These remarks are the unit's own.");
  }

  @Test
  void theReplyOpensBelowTheQuestion() {
    Document page = page("handbook/fire.html");
    Element reply = page.select("details.reply").first();
    assertThat(reply).isNotNull();
    assertThat(reply.select("summary").text()).isEqualTo("Show the answer");
    assertThat(reply.previousElementSibling().text()).endsWith("?");
  }

  @Test
  void whatTheUnitHasComesFromItsContent() {
    Document page = page("handbook/argon.html");
    assertThat(page.select("table").text()).contains("Restharrow").contains("Room 3");
    Document bipolar = base("=== chapters/bipolar.md\n+Ours.\n", "handbook/bipolar.html");
    assertThat(bipolar.select("table").text()).contains("Arrowgrass").doesNotContain("Restharrow");
  }

  /** A chapter may name another that the unit has left out; a page of its own may not. */
  @Test
  void aChapterThatIsLeftOutIsNamedWithoutALink() {
    Document page = base("=== chapters/argon.md\n+We have none.\n", "handbook/argon.html");
    assertThat(page.select("main").text()).contains("Read bowel gas");
    assertThat(page.select("a[href*=bowel-gas]")).isEmpty();
    assertThat(page.select(".broken")).isEmpty();
  }

  @Test
  void everyClaimStandsOnThePageOfClaims() {
    int claims = chapters().stream().mapToInt(page -> Grounds.of(page).claims().size()).sum();
    Document page = page("claims.html");
    assertThat(page.select("tbody tr")).hasSize(claims);
    assertThat(page.select("tbody td, tbody th")).noneMatch(cell -> cell.text().isBlank());
    assertThat(page.select("tbody").text()).contains("recalled, not read").contains("nobody found");
    assertThat(page("handbook.html").select("a[href=claims.html]")).isNotEmpty();
  }

  @Test
  void temperaturesAreThoseOfTheDose() {
    assertThat(page("handbook/heat-and-tissue.html").select("th").eachText())
        .map(text -> text.replace('\u00a0', ' '))
        .contains("43 °C", "50 °C")
        .doesNotContain("203 °C");
  }
}
