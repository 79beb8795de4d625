package stackside.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import stackside.check.RulePage;
import stackside.content.NearNames;
import stackside.source.Fault;

/** Says what a rule means, with a wrong and a right example. */
@Command(
    name = "explain",
    description = "Says what a message means, with a wrong and a right example.")
final class ExplainCommand implements Callable<Integer> {
  private final Desk desk;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "RULE",
      description = "The word in brackets behind a message; all rules are listed if none is given.")
  private Optional<String> rule = Optional.empty();

  ExplainCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() throws UsageException {
    if (rule.isEmpty()) {
      Faults.all().forEach(fault -> desk.console().result(fault.id() + ": " + fault.summary()));
      return ExitCode.CLEAN.number();
    }
    explain(known(rule.get()));
    return ExitCode.CLEAN.number();
  }

  private static Fault known(String id) throws UsageException {
    List<Fault> faults = Faults.all();
    Optional<Fault> fault = faults.stream().filter(each -> each.id().equals(id)).findFirst();
    if (fault.isPresent()) {
      return fault.get();
    }
    List<String> near = NearNames.of(id, faults.stream().map(Fault::id).toList());
    throw new UsageException(
        "there is no rule '"
            + id
            + "'; "
            + (near.isEmpty() ? "'stackside explain' lists all" : NearNames.question(near)));
  }

  private void explain(Fault fault) {
    Console console = desk.console();
    console.result(fault.id() + " (" + fault.severity().word() + "): " + fault.summary());
    RulePage.of(fault)
        .ifPresent(
            page -> {
              section("What it checks", page.whatItChecks());
              section("Why it matters", page.whyItMatters());
              section("Wrong", page.wrong());
              section("Right", page.right());
            });
  }

  private void section(String heading, String text) {
    if (!text.isEmpty()) {
      desk.console().result("");
      desk.console().result(heading);
      desk.console().result("");
      text.lines().forEach(desk.console()::result);
    }
  }
}
