package stackside.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import stackside.derive.signed.CanonicalJson;
import stackside.derive.signed.Json;
import stackside.source.Location;
import stackside.source.Note;
import stackside.source.Problem;
import stackside.source.Severity;

/** Prints a result for another program, in the form that {@code explain json} describes. */
final class RunResultJson {
  private static final int FORMAT = 1;

  /** Where the document is described for its readers. */
  static final String PAGE = "/stackside/json.md";

  private RunResultJson() {}

  static String of(RunResult outcome) {
    Map<String, Json> members = empty(outcome.command(), outcome.exitCode());
    members.put("on", Json.text(outcome.on().toString()));
    members.put(
        "problems", Json.items(outcome.problems().stream().map(RunResultJson::of).toList()));
    members.put("standing", Json.items(outcome.matters().stream().map(RunResultJson::of).toList()));
    members.put("notices", Json.items(outcome.notices().stream().map(Json::text).toList()));
    members.put("errors", Json.number(outcome.count(Severity.ERROR)));
    members.put("warnings", Json.number(outcome.count(Severity.WARNING)));
    outcome.written().ifPresent(written -> members.put("written", of(written)));
    return CanonicalJson.of(Json.members(members));
  }

  /** A command that could not do its work says why, and has found nothing. */
  static String failure(String command, ExitCode code, String sentence) {
    Map<String, Json> members = empty(command, code);
    members.put("failure", text(sentence));
    return CanonicalJson.of(Json.members(members));
  }

  private static Map<String, Json> empty(String command, ExitCode code) {
    Map<String, Json> members = new TreeMap<>();
    members.put("format", Json.number(FORMAT));
    members.put("command", text(command));
    members.put("exit", Json.number(code.number()));
    for (String list : List.of("problems", "standing", "notices")) {
      members.put(list, Json.items(List.of()));
    }
    for (String count : List.of("errors", "warnings")) {
      members.put(count, Json.number(0));
    }
    return members;
  }

  private static Json of(RunResult.Written written) {
    return Json.members(
        Map.of(
            "folder", Json.text(written.folder().toString()),
            "files", Json.number(written.files()),
            "changed", Json.number(written.changed()),
            "open", Json.text(written.open().toString())));
  }

  private static Json of(OpenItem matter) {
    return Json.members(
        Map.of(
            "thing", Json.text(matter.about().toString()),
            "words", text(matter.words()),
            "details", Json.items(matter.details().stream().map(RunResultJson::text).toList())));
  }

  private static Json of(Problem problem) {
    Map<String, Json> members = place(problem.at());
    members.put("rule", Json.text(problem.fault().id()));
    members.put("severity", Json.text(problem.severity().word()));
    members.put("message", text(problem.message()));
    problem.help().ifPresent(help -> members.put("mend", text(help)));
    List<Json> notes = new ArrayList<>();
    for (Note note : problem.notes()) {
      Map<String, Json> second = place(note.at());
      second.put("message", text(note.message()));
      notes.add(Json.members(second));
    }
    members.put("notes", Json.items(notes));
    return Json.members(members);
  }

  private static Map<String, Json> place(Location at) {
    Map<String, Json> members = new TreeMap<>();
    members.put("file", text(at.file()));
    members.put("line", Json.number(at.line()));
    members.put("column", Json.number(at.column()));
    members.put("length", Json.number(at.length()));
    return members;
  }

  /** Half a surrogate pair, which no JSON text may hold, becomes a replacement mark. */
  private static Json text(String words) {
    return Json.text(
        words
            .codePoints()
            .map(point -> Character.getType(point) == Character.SURROGATE ? 0xfffd : point)
            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
            .toString());
  }
}
