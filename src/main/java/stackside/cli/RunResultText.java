package stackside.cli;

import stackside.source.Problem;
import stackside.source.Severity;

/** Prints a result for a person: the problems to one stream, the summary to the other. */
final class RunResultText {
  private final Console console;

  RunResultText(Console console) {
    this.console = console;
  }

  void print(RunResult outcome) {
    ProblemText words = new ProblemText(outcome.sources());
    for (Problem problem : outcome.problems()) {
      words.lines(problem).forEach(console::problem);
    }
    outcome.notices().forEach(notice -> console.problem("note: " + notice));
    if (!outcome.matters().isEmpty()) {
      console.result("What holds cards back on " + outcome.on() + ":");
      OpenItem.told(outcome.matters())
          .forEach(line -> console.result("  " + Printable.of(line).text()));
    }
    console.result(counts(outcome));
    outcome.written().map(RunResultText::written).ifPresent(console::result);
  }

  private static String counts(RunResult outcome) {
    return number(outcome.count(Severity.ERROR), "error")
        + ", "
        + number(outcome.count(Severity.WARNING), "warning")
        + held(outcome.matters().size());
  }

  private static String held(int items) {
    return items == 0
        ? ""
        : "; " + number(items, "item") + (items == 1 ? " holds" : " hold") + " cards back";
  }

  private static String written(RunResult.Written written) {
    return number(written.files(), "file")
        + " in "
        + written.folder()
        + (written.changed() == 0 ? ", none changed" : ", " + written.changed() + " changed")
        + "; open "
        + written.open();
  }

  private static String number(long count, String noun) {
    return (count == 0 ? "no" : count) + " " + noun + (count == 1 ? "" : "s");
  }
}
