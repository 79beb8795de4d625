package stackside.hostile;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stackside.cli.WholeChain;
import stackside.derive.signed.Json;
import stackside.derive.signed.JsonReader;
import stackside.source.Problem;

/** Requirements that every message must meet, whatever it is about. */
final class Words {
  private static final int LONGEST = 700;
  private static final Pattern TRACE =
      Pattern.compile(
          "(Exception|Error)\\b(?! at)|\\tat |\\bjava\\.|Optional\\[|\\.[A-Z]\\w*@[0-9a-f]{5,}");
  private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}&&[^\\n]]");

  private Words() {}

  /** What is wrong with the messages of a chain; empty if nothing is. */
  static List<String> wrong(WholeChain chain, String text, String printed) {
    List<String> wrong = new ArrayList<>();
    for (Problem problem : chain.problems()) {
      of(problem, chain).forEach(what -> wrong.add(what + ": " + problem));
    }
    if (CONTROL.matcher(text).find()) {
      wrong.add("a control character goes to the terminal");
    }
    try {
      Json.Members json = (Json.Members) JsonReader.read(printed);
      Json.Items told = (Json.Items) json.values().get("problems");
      if (told.values().size() != chain.problems().size()) {
        wrong.add("JSON tells " + told.values().size() + " of " + chain.problems().size());
      }
    } catch (JsonReader.Unreadable e) {
      wrong.add("unreadable JSON: " + e.getMessage());
    }
    return wrong;
  }

  private static List<String> of(Problem problem, WholeChain chain) {
    String line = chain.line(problem);
    List<String> wrong = new ArrayList<>();
    String message = problem.message();
    if (message.isBlank() || message.contains("\n") || message.endsWith(".")) {
      wrong.add("no sentence of the agreed form");
    }
    if (message.length() > LONGEST) {
      wrong.add("a message of " + message.length() + " characters");
    }
    Matcher trace = TRACE.matcher(message);
    if (trace.find() && !chain.isWritten(trace.group())) {
      wrong.add("the program's insides");
    }
    if (problem.at().column() - 1 + problem.at().length()
        > Math.max(line.length(), problem.at().column())) {
      wrong.add("a place beyond its line");
    }
    return wrong;
  }
}
