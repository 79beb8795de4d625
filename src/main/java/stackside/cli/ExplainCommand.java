package stackside.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import stackside.check.RulePage;
import stackside.content.Chapters;
import stackside.content.NearNames;
import stackside.source.Fault;

/** Says what a rule means, with a wrong and a right example. */
final class ExplainCommand implements Command {
  private static final CommandSpec.Place RULE =
      new CommandSpec.Place(
          "RULE",
          false,
          "The word in brackets after a message, json for what --format json prints, or"
              + " chapter:NAME for a chapter of the handbook as it is written; all rules are"
              + " listed if none is given.");
  static final CommandSpec FORM =
      new CommandSpec(
          "explain",
          "Says what a message means, with a wrong and a right example.",
          Optional.of(RULE),
          List.of());

  private static final String CHAPTER = "chapter:";

  private final CommandContext desk;
  private final Optional<String> rule;

  ExplainCommand(CommandContext desk, Arguments given) {
    this.desk = desk;
    this.rule = given.place();
  }

  @Override
  public ExitCode run() throws UsageException {
    if (rule.isEmpty()) {
      Faults.all().forEach(fault -> desk.console().result(fault.id() + ": " + fault.summary()));
      return ExitCode.CLEAN;
    }
    if (rule.get().equals("json")) {
      json().lines().forEach(desk.console()::result);
      return ExitCode.CLEAN;
    }
    if (rule.get().startsWith(CHAPTER)) {
      chapter(rule.get().substring(CHAPTER.length())).lines().forEach(desk.console()::result);
      return ExitCode.CLEAN;
    }
    explain(known(rule.get()));
    return ExitCode.CLEAN;
  }

  /** A chapter in Markdown, for a unit that wants to change it. */
  private static String chapter(String name) throws UsageException {
    Optional<String> text = Chapters.text(name);
    if (text.isEmpty()) {
      throw new UsageException(
          "there is no chapter '"
              + name
              + "'; "
              + NearNames.questionOr(
                  "the chapters are " + String.join(", ", Chapters.names()),
                  name,
                  Chapters.names()));
    }
    return text.get();
  }

  /** The description of the document for programs. */
  static String json() {
    try (InputStream page = ExplainCommand.class.getResourceAsStream(RunResultJson.PAGE)) {
      if (page == null) {
        throw new IllegalStateException("the program lacks its file " + RunResultJson.PAGE);
      }
      return new String(page.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + RunResultJson.PAGE, e);
    }
  }

  private static Fault known(String id) throws UsageException {
    List<Fault> faults = Faults.all();
    Optional<Fault> fault = faults.stream().filter(each -> each.id().equals(id)).findFirst();
    if (fault.isPresent()) {
      return fault.get();
    }
    List<String> ids = faults.stream().map(Fault::id).toList();
    throw new UsageException(
        "there is no rule '"
            + id
            + "'; "
            + NearNames.questionOr("'stackside explain' lists all", id, ids));
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
