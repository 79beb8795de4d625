package stackside.render.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import stackside.Units;
import stackside.derive.Edited;
import stackside.derive.output.ModeOutput;
import stackside.derive.output.Outputs;
import stackside.derive.output.Together;
import stackside.energy.Lead;
import stackside.model.Kind;
import stackside.model.Mode;
import stackside.model.Unit;
import stackside.quantity.Ohms;
import stackside.render.Marking;

/** The figures on handbook pages: drawn, in a table and in words, all with the same numbers. */
final class HandbookFiguresTest {

  private static Document page(String name) {
    return Jsoup.parse(
        SiteRendererTest.text(DemonstrationSite.files(), "handbook/" + name + ".html"));
  }

  private static Document welcome(String patch) {
    Unit unit = Edited.base(patch);
    return Jsoup.parse(
        SiteRendererTest.text(
            DemonstrationSite.render(unit, Marking.DRAFT), "handbook/welcome.html"));
  }

  private static List<ModeOutput> demonstrated() {
    Unit unit = Units.demonstration();
    List<Mode> modes =
        List.of(
            Edited.find(unit, Kind.MODE, "cordgrass/interval-cut", Mode.class),
            Edited.find(unit, Kind.MODE, "cordgrass/gentle-coag", Mode.class));
    return Together.of(Outputs.of(unit), modes).settings().stream()
        .map(use -> use.output().orElseThrow())
        .toList();
  }

  @Test
  void everyFigureOfTheDemonstrationIsDrawnWideAndNarrowWithATable() {
    for (String name : List.of("what-current-does", "waveforms", "lesion-by-lesion")) {
      Document page = page(name);
      assertThat(page.select(".wide svg title")).as(name).isNotEmpty();
      assertThat(page.select(".narrow svg desc")).as(name).isNotEmpty();
      assertThat(page.select("figure ~ .scroll table")).as(name).isNotEmpty();
    }
    assertThat(page("when-it-fails").select(".pair svg")).hasSize(3);
    assertThat(page("when-it-fails").select(".pair ~ .scroll tbody tr").size())
        .isGreaterThanOrEqualTo(3);
  }

  @Test
  void theTableOfPowersHasTheNumbersOfTheEnergyPackage() {
    ModeOutput cut = demonstrated().get(0);
    ModeOutput soft = demonstrated().get(1);
    int rows = 0;
    for (Element row : page("what-current-does").select("tbody tr")) {
      if (row.select("th").text().endsWith("ohm")) {
        Ohms load = new Ohms(number(row.select("th").text()));
        rows++;
        assertThat(number(row.select("td").get(0).text()))
            .isCloseTo(cut.curve().power(load).orElseThrow().value(), within(0.5));
        assertThat(number(row.select("td").get(1).text()))
            .isCloseTo(cut.curve().power(load).orElseThrow().value() / 30, within(0.05));
        assertThat(number(row.select("td").get(2).text()))
            .isCloseTo(soft.curve().power(load).orElseThrow().value(), within(0.5));
      }
    }
    assertThat(rows).isEqualTo(6);
  }

  private static double number(String text) {
    return Double.parseDouble(text.replaceAll("[^0-9.]", ""));
  }

  @Test
  void theWordsHaveTheSameNumbers() {
    ModeOutput cut = demonstrated().get(0);
    ModeOutput soft = demonstrated().get(1);
    long left = Math.round(soft.dried().orElseThrow().value());
    long held = Math.round(cut.dried().orElseThrow().value());
    long upTo = Math.round(Lead.of(soft.curve(), cut.curve()).orElseThrow().value());
    assertThat(text(page("what-current-does")))
        .contains("Gentle coag falls to %d W of the 60 W".formatted(left))
        .contains("Interval cut still delivers %d W of its 60 W".formatted(held))
        .contains("than Interval cut into every load below %d ohm.".formatted(upTo))
        .contains(
            "Published points take precedence over the calculation, and nothing is extrapolated.")
        .contains("Below 50 ohm and above 2,000 ohm the output is not published.");
  }

  private static String text(Document page) {
    return page.text().replace('\u00a0', ' ');
  }

  private static final String POWER =
      """
      === handbook/welcome.md
      +
      +```figure
      +power-against-load
      +mode:arrowgrass/pulsed-cut
      +mode:arrowgrass/brisk
      +```
      """;

  /**
   * Common practice, no source: a blended cut of about 30 W is usual for polypectomy, soft
   * coagulation is set to about 80 W, and with a peak below about 200 V it cannot spark (the 200 V
   * from memory). With a sine of 190 V peak, U²/R = 18 W is left in 1,000 ohm, and the soft mode
   * leads the cut up to U²/30 W = 614 ohm.
   */
  @Test
  void usualSettingsBehaveAsCommonPracticeSays() {
    Document page =
        welcome(
            POWER
                + """
                === machines/arrowgrass.yaml
                -    current: pulsed-cut
                -    waveform: pulsed
                +    current: blended-cut
                +    waveform: continuous
                === machines/arrowgrass.yaml
                -    pulse: {on: 30 ms, every: 900 ms}
                === machines/arrowgrass.yaml
                -    current: forced-coagulation
                -    waveform: modulated
                +    current: soft-coagulation
                +    waveform: continuous
                === machines/arrowgrass.yaml
                -    peak-voltage: {1: 1000 V peak, 2: 1300 V peak}
                -    crest-factor: 4
                +    peak-voltage: 190 V peak
                +    crest-factor: 1.4
                === profiles/arrowgrass.yaml
                -      yellow: {mode: pulsed-cut, level: 2, limit: 60 W}
                -      blue: {mode: brisk, level: 1, limit: 40 W}
                +      yellow: {mode: pulsed-cut, level: 2, limit: 30 W}
                +      blue: {mode: brisk, level: 1, limit: 80 W}
                """);
    assertThat(text(page))
        .contains("Brisk coag falls to 18 W of the 80 W set.")
        .contains("Pulsed cut still delivers 30 W of its 30 W.")
        .contains("Brisk coag delivers more than Pulsed cut into every load below 614 ohm.");
  }

  @Test
  void withoutASoftModeNothingIsSaidOfOne() {
    assertThat(text(welcome(POWER))).doesNotContain("falls to").contains("within the burst");
  }

  @Test
  void whatCannotBeDrawnSaysSo() {
    Document page =
        welcome(
            """
            === handbook/welcome.md
            +
            +```figure
            +snare-size
            +```
            +
            +```figure
            +power-against-load
            +mode:birch/argon
            +```
            +
            +- Look:
            +
            +  ```figure
            +  stalk-heating
            +  ```
            """);
    assertThat(page.select("svg")).isEmpty();
    assertThat(text(page))
        .contains("The figure “snare-size” cannot be drawn")
        .contains("The figure “power-against-load” cannot be drawn")
        .contains("The figure “stalk-heating” is not drawn here");
  }

  @Test
  void numbersAreMarkedByTheirSource() {
    assertThat(text(page("what-current-does")))
        .contains("In the tissue inside the snare")
        .contains("Current and sizes come from a textbook chapter, see Sources")
        .contains("For learning only");
    assertThat(text(page("lesion-by-lesion")))
        .contains("Half the width means 16 times the heating at the same current");
    assertThat(text(page("waveforms")))
        .contains("1.6 within the burst")
        .contains("4.5 over the cycle")
        .contains("On for 30 ms in every 900 ms");
  }
}
