package stackside.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.cli.Option;
import stackside.content.NearNames;
import stackside.publish.PublishFailure;
import stackside.render.site.BrokenTemplate;

/** The command line: takes arguments, runs the command that they name, and returns an exit code. */
public final class Cli {
  private static final Option VERSION =
      Option.builder("V").longOpt("version").desc("Says which version this is.").get();
  private static final List<Known> COMMANDS =
      List.of(
          new Known(CheckCommand.FORM, CheckCommand::new),
          new Known(DraftCommand.FORM, DraftCommand::new),
          new Known(ApproveCommand.FORM, ApproveCommand::new),
          new Known(IssueCommand.FORM, IssueCommand::new),
          new Known(WithdrawCommand.FORM, WithdrawCommand::new),
          new Known(LiftCommand.FORM, LiftCommand::new),
          new Known(ExplainCommand.FORM, ExplainCommand::new),
          new Known(StartCommand.FORM, StartCommand::new));

  private final CommandContext desk;

  public Cli(OutputStream out, OutputStream err) {
    this(out, err, Environment.real());
  }

  Cli(OutputStream out, OutputStream err, Environment surroundings) {
    this.desk = new CommandContext(new Console(out, err), surroundings);
  }

  /** A command of the program and how it is made. */
  private record Known(CommandSpec form, Command.Maker maker) {
    String name() {
      return form.name();
    }
  }

  /** Runs a command and returns its exit code. No exception leaves this method. */
  public int run(String... arguments) {
    ExitCode code;
    try {
      code = answer(List.of(arguments));
    } catch (Exception e) {
      code = failed(e, arguments);
    }
    return (desk.console().delivered() ? code : ExitCode.FAILED).number();
  }

  private ExitCode answer(List<String> arguments) throws IOException, UsageException {
    if (arguments.isEmpty()) {
      throw new UsageException("say which command to run; 'stackside --help' lists them");
    }
    String first = arguments.get(0);
    if (stands(CommandSpec.HELP, first)) {
      return told(Help.of(COMMANDS.stream().map(Known::form).toList(), VERSION, columns()));
    }
    if (stands(VERSION, first)) {
      return told(version());
    }
    Known known = named(first);
    List<String> behind = arguments.subList(1, arguments.size());
    if (behind.stream().anyMatch(each -> stands(CommandSpec.HELP, each))) {
      return told(Help.of(known.form(), columns()));
    }
    return known.maker().of(desk, known.form().read(behind)).run();
  }

  private static boolean stands(Option option, String word) {
    return word.equals("-" + option.getOpt()) || word.equals("--" + option.getLongOpt());
  }

  private static Known named(String word) throws UsageException {
    for (Known each : COMMANDS) {
      if (each.name().equals(word)) {
        return each;
      }
    }
    List<String> names = COMMANDS.stream().map(Known::name).toList();
    throw new UsageException(
        "there is no command '"
            + word
            + "'; "
            + NearNames.questionOr("'stackside --help' lists them", word, names));
  }

  /** How many columns the terminal has, if it says so. */
  private static int columns() {
    String said = System.getenv("COLUMNS");
    return said != null && said.matches("[1-9]\\d{0,3}")
        ? Integer.parseInt(said)
        : Integer.MAX_VALUE;
  }

  private ExitCode told(String words) {
    words.lines().forEach(desk.console()::result);
    return ExitCode.CLEAN;
  }

  /** The version, where the program runs from its jar. */
  private static String version() {
    String version = Cli.class.getPackage().getImplementationVersion();
    return "Stackside " + (version == null ? "from its classes" : version);
  }

  private ExitCode failed(Exception e, String... arguments) {
    ExitCode code = code(e);
    if (Format.isJson(arguments)) {
      desk.console().result(RunResultJson.failure(arguments[0], code, sentence(e)));
    } else {
      desk.console().problem("stackside: " + sentence(e));
    }
    return code;
  }

  private static ExitCode code(Exception e) {
    boolean usage =
        e instanceof UsageException
            || e instanceof BrokenTemplate
            || (e instanceof PublishFailure failure
                && failure.reason() == PublishFailure.Reason.NOT_OURS);
    return usage ? ExitCode.USAGE : ExitCode.FAILED;
  }

  private static String sentence(Exception e) {
    if (e instanceof UsageException || e instanceof BrokenTemplate || e instanceof PublishFailure) {
      return words(e);
    }
    if (e instanceof IOException refused) {
      String reason = Printable.of(PublishFailure.words(refused)).text();
      return "the disk refused: " + reason + ". Mend that, then run the command again";
    }
    return "Stackside itself failed, not your content. " + traceOf(e);
  }

  private static String words(Exception e) {
    return Printable.of(String.valueOf(e.getMessage())).text();
  }

  /** Writes the stack trace to a file for whoever mends the fault. The reader does not see it. */
  private static String traceOf(Throwable failure) {
    StringWriter trace = new StringWriter();
    failure.printStackTrace(new PrintWriter(trace));
    try {
      Path file = Files.createTempFile("stackside-failure-", ".txt");
      Files.writeString(file, trace.toString(), StandardCharsets.UTF_8);
      return "Please send the file " + file + " to whoever looks after it";
    } catch (IOException e) {
      return "It said: " + failure;
    }
  }
}
