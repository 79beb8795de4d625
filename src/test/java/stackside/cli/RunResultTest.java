package stackside.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stackside.derive.signed.Json;
import stackside.derive.signed.JsonReader;
import stackside.source.Fault;
import stackside.source.Location;
import stackside.source.Problem;
import stackside.source.Severity;
import stackside.source.SourceText;
import stackside.source.Sources;

/** How an outcome reads, for a person and for a program. */
final class RunResultTest {

  private static final Fault ABOVE =
      new Fault("setting-above-limit", Severity.ERROR, "a setting is above what the machine has");
  private static final Fault ASKED =
      new Fault("asked-about", Severity.WARNING, "something is asked about");

  private static final Problem ERROR =
      ABOVE
          .at(new Location("profiles/p.yaml", 2, 8, 5), "limit 900 W is above 120 W")
          .note(new Location("machines/m.yaml", 1, 1, 3), "the limit \"stands\" here")
          .help("choose a limit that the machine has");
  private static final Problem WARNING = ASKED.at(Location.startOf("unit.yaml"), "is that so?");

  private static RunResult outcome(Problem... problems) {
    return new RunResult(
        "check",
        LocalDate.of(2026, 3, 1),
        Sources.of(
            List.of(new SourceText("profiles/p.yaml", List.of("- id: é", "limit: 900 W # x")))),
        List.of(problems),
        List.of(),
        false,
        List.of(),
        Optional.empty());
  }

  private record Printed(String out, String err) {}

  private static Printed print(RunResult outcome) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Console console = new Console(out, err);
    new RunResultText(console).print(outcome);
    assertThat(console.delivered()).isTrue();
    return new Printed(out.toString(UTF_8), err.toString(UTF_8));
  }

  @Test
  void problemsGoOneWayAndTheirSumTheOther() {
    Printed printed = print(outcome(ERROR, WARNING));
    assertThat(printed.err())
        .isEqualTo(
            """
            profiles/p.yaml:2:8: error: limit 900 W is above 120 W [setting-above-limit]
              2 | limit: 900 W # x
                |        ^^^^^
              note: machines/m.yaml:1:1: the limit "stands" here
              mend: choose a limit that the machine has
            unit.yaml:1:1: warning: is that so? [asked-about]
            """);
    assertThat(printed.out()).isEqualTo("1 error, 1 warning\n");
  }

  @Test
  void whatWasWrittenIsSaidLast() {
    RunResult.Written written =
        new RunResult.Written(Path.of("target/draft"), 12, 3, Path.of("target/draft/index.html"));
    assertThat(print(outcome().with(written)).out())
        .isEqualTo(
            """
            no errors, no warnings
            12 files in target/draft, 3 changed; open target/draft/index.html
            """);
  }

  @Test
  void warningsDoNotCount() {
    assertThat(outcome().exitCode()).isEqualTo(ExitCode.CLEAN);
    assertThat(outcome(WARNING).exitCode()).isEqualTo(ExitCode.CLEAN);
    assertThat(outcome(ERROR, WARNING).exitCode()).isEqualTo(ExitCode.CONTENT);
  }

  @Test
  void cardsThatAreHeldBackAreFourAndAnErrorWins() {
    assertThat(outcome(WARNING).holding(true).exitCode()).isEqualTo(ExitCode.HELD_BACK);
    assertThat(ExitCode.HELD_BACK.number()).isEqualTo(4);
    assertThat(outcome(ERROR).holding(true).exitCode()).isEqualTo(ExitCode.CONTENT);
    assertThat(RunResultJson.of(outcome().holding(true))).contains("\"exit\":4");
  }

  @Test
  void jsonSaysTheSame() throws Exception {
    Json.Members json = (Json.Members) JsonReader.read(RunResultJson.of(outcome(ERROR, WARNING)));
    assertThat(json.values())
        .containsEntry("format", Json.number(1))
        .containsEntry("command", Json.text("check"))
        .containsEntry("on", Json.text("2026-03-01"))
        .containsEntry("errors", Json.number(1))
        .containsEntry("warnings", Json.number(1))
        .containsEntry("exit", Json.number(1))
        .doesNotContainKey("written");
    Json.Items problems = (Json.Items) json.values().get("problems");
    assertThat(problems.values()).hasSize(2);
    assertThat(((Json.Members) problems.values().get(0)).values())
        .containsEntry("rule", Json.text("setting-above-limit"))
        .containsEntry("severity", Json.text("error"))
        .containsEntry("file", Json.text("profiles/p.yaml"))
        .containsEntry("line", Json.number(2))
        .containsEntry("column", Json.number(8))
        .containsEntry("length", Json.number(5))
        .containsEntry("message", Json.text("limit 900 W is above 120 W"))
        .containsEntry("mend", Json.text("choose a limit that the machine has"))
        .containsKey("notes");
  }

  @Test
  void jsonHoldsWhateverAnAuthorWrote() throws Exception {
    Problem odd = ABOVE.at(Location.startOf("a.yaml"), "'\ud800\u0000\u001b\"\\' is odd");
    Json.Members json = (Json.Members) JsonReader.read(RunResultJson.of(outcome(odd)));
    Json.Members problem =
        (Json.Members) ((Json.Items) json.values().get("problems")).values().get(0);
    assertThat(problem.text("message")).contains("'\ufffd\u0000\u001b\"\\' is odd");
  }
}
