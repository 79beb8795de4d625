package stackside.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import stackside.Units;
import stackside.model.Unit;

/** Reads whole units. */
final class ContentReaderTest {

  @Test
  void demonstration_readsWithoutAProblem() {
    Unit unit = Units.demonstration();

    assertThat(unit.machines()).isNotEmpty();
    assertThat(unit.broken()).isEmpty();
  }

  @Test
  void byteOrderMark_isAccepted() {
    assertThat(Trial.empty().with("unit.yaml", "\uFEFF" + Trial.unitFile()).problems()).isEmpty();
  }

  @Test
  void windowsLineEnds_areAcceptedAndKeepLineNumbers() {
    String windows = Trial.unitFile().replace("\n", "\r\n");

    assertThat(Trial.empty().with("unit.yaml", windows).problems()).isEmpty();
    assertThat(
            Trial.empty()
                .with("unit.yaml", windows.replace("demonstration", "demo"))
                .read()
                .problems())
        .singleElement()
        .satisfies(problem -> assertThat(problem.at()).hasToString("unit.yaml:3:9"));
  }

  @Test
  void windowsLineEnds_areAcceptedInTables() {
    assertThat(
            Trial.withMachine().with("assets.csv", Trial.ASSETS.replace("\n", "\r\n")).problems())
        .isEmpty();
  }

  @Test
  void noBreakSpaces_areSpacesInValues() {
    assertThat(
            Trial.empty()
                .with("unit.yaml", Trial.unitFile().replace("700 mm", "700\u00A0mm"))
                .problems())
        .isEmpty();
  }

  @Test
  void otherFormat_isTheOnlyProblem() {
    Trial trial =
        Trial.bare()
            .with("unit.yaml", Trial.unitFile().replace("format: 1", "format: 2\nnews: yes"))
            .with("instruments.yaml", "- {new: yes}\n");

    assertThat(trial.problems())
        .containsExactly(
            "unit.yaml:1:9+1: this content is of format 2, and this program reads format 1"
                + " [unknown-format] | use the version of the program that this content was written"
                + " for");
    assertThat(trial.read().unit()).isEmpty();
  }

  @Test
  void brokenUnitFile_leavesNoUnitAndStillReportsOtherFiles() {
    Trial trial =
        Trial.bare()
            .with("unit.yaml", Trial.unitFile().replace("name: Saltings Endoscopy\n", ""))
            .with("instruments.yaml", "- {id: a}\n");

    assertThat(trial.read().unit()).isEmpty();
    assertThat(trial.messages()).contains("'name' is missing", "'rated-voltage' is missing");
  }

  @Test
  void wrongItemInTheUnitFile_leavesTheUnitWithoutIt() {
    Trial trial =
        Trial.bare()
            .with(
                "unit.yaml",
                Trial.unitFile()
                    .replace(
                        "roles: [{id: lead-nurse, name: Lead nurse}]",
                        "roles: [{id: lead-nurse, name: Lead nurse}, {id: physics}]"));

    assertThat(trial.messages()).containsExactly("'name' is missing");
    assertThat(trial.read().unit().orElseThrow().details().roles()).hasSize(1);
  }

  @Test
  void problems_areSortedByPlaceAndReportedOnce() {
    Reading reading =
        Trial.bare()
            .with("instruments.yaml", "- {id: b}\n- {id: a}\n")
            .with("cables.yaml", "- {id: c}\n")
            .read();

    assertThat(reading.problems()).isSorted().doesNotHaveDuplicates().hasSize(12);
  }

  @Test
  void everyProblem_showsTheLineItIsAbout() {
    Reading reading = Trial.bare().with("instruments.yaml", "- {id: b}\n").read();

    assertThat(reading.sources().excerpt(reading.problems().get(0).at())).contains("- {id: b}");
  }

  @Test
  void placeAndLanguageOfTheComputer_changeNothing() {
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    Reading here = Units.reading(Units.folder("whole"));
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));

      assertThat(Units.reading(Units.folder("whole"))).isEqualTo(here);
      assertThat(Trial.bare().with("instruments.yaml", "- {ID: B, KIND: MONOPOLAR}\n").problems())
          .contains("instruments.yaml:1:4+2: unknown key 'ID' [unknown-key] | did you mean 'id'?")
          .doesNotContain(
              "instruments.yaml:1:3+24: 'id' is missing [missing-key] | add the key 'id' with its"
                  + " value")
          .contains(
              "instruments.yaml:1:11+4: unknown key 'KIND' [unknown-key] | did you mean 'kind'?");
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void textThatYamlReadsOtherwise_staysAsTyped() {
    Unit unit =
        Trial.bare()
            .with(
                "instruments.yaml",
                """
                - {id: no, name: on, also: [012, 1:30, 0x1F, 1e3, 2026-01-01, "null", .inf], kind: monopolar, connector: y, rated-voltage: 2000 V peak}
                """)
            .read()
            .unit()
            .orElseThrow();

    assertThat(unit.instruments())
        .singleElement()
        .satisfies(
            instrument -> {
              assertThat(instrument.id().slug()).isEqualTo("no");
              assertThat(instrument.name().value()).isEqualTo("on");
              assertThat(instrument.connector().value().slug()).isEqualTo("y");
              assertThat(instrument.also())
                  .extracting(fact -> fact.value())
                  .containsExactly("012", "1:30", "0x1F", "1e3", "2026-01-01", "null", ".inf");
            });
  }

  @Test
  void sources_holdFilesThatCouldNotBeUsed() {
    Reading reading =
        Trial.bare()
            .with("instruments.yaml", "- {id: é}\n".getBytes(StandardCharsets.ISO_8859_1))
            .read();

    assertThat(reading.sources().files()).containsKey("instruments.yaml");
  }
}
