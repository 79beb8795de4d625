package stackside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import stackside.derive.signed.Json;
import stackside.derive.signed.JsonReader;
import stackside.model.Kind;
import stackside.model.ThingId;
import stackside.source.Fault;
import stackside.source.Location;
import stackside.source.Severity;
import stackside.source.Sources;

/** The page that describes the JSON names every field that is printed, and no other. */
final class OutcomeJsonTest {
  private static final Pattern ROW = Pattern.compile("(?m)^\\| `([a-z.]+)` \\|");

  private static RunResult everything() {
    Location at = Location.startOf("unit.yaml");
    return new RunResult(
        "draft",
        LocalDate.of(2026, 3, 1),
        Sources.of(List.of()),
        List.of(
            new Fault("a-rule", Severity.ERROR, "a summary")
                .at(at, "is wrong")
                .note(at, "see here")
                .help("mend it")),
        List.of(
            new OpenItem(
                new ThingId(Kind.ROOM, "room-1"),
                OpenItem.Basis.SIGNATURES,
                "not signed",
                List.of("a change"))),
        true,
        List.of("a notice"),
        Optional.of(new RunResult.Written(Path.of("made"), 2, 1, Path.of("made/index.html"))));
  }

  private static void collect(String before, Json json, Set<String> fields) {
    if (json instanceof Json.Members members) {
      members
          .values()
          .forEach(
              (key, value) -> {
                fields.add(before + key);
                collect(before + key + ".", value, fields);
              });
    } else if (json instanceof Json.Items items) {
      items.values().forEach(each -> collect(before, each, fields));
    }
  }

  @Test
  void everyFieldIsDescribed_andEveryDescribedFieldIsPrinted() throws Exception {
    Set<String> printed = new TreeSet<>();
    collect("", JsonReader.read(RunResultJson.of(everything())), printed);
    collect("", JsonReader.read(RunResultJson.failure("chekc", ExitCode.USAGE, "no")), printed);
    Set<String> described = new TreeSet<>();
    ROW.matcher(ExplainCommand.json()).results().forEach(row -> described.add(row.group(1)));
    assertThat(described).hasSizeGreaterThan(30).isEqualTo(printed);
  }
}
