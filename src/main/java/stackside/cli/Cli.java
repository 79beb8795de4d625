package stackside.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import stackside.publish.PublishFailure;
import stackside.render.site.BrokenTemplate;

/** The command line: takes arguments, runs the command they name, answers an exit code. */
public final class Cli {
  private final Desk desk;

  public Cli(OutputStream out, OutputStream err) {
    this(out, err, Surroundings.real());
  }

  Cli(OutputStream out, OutputStream err, Surroundings surroundings) {
    this.desk = new Desk(new Console(out, err), surroundings);
  }

  /** Runs a command and answers its exit code; nothing it meets comes out as an exception. */
  public int run(String... arguments) {
    int code = commandLine(arguments).execute(arguments);
    return desk.console().delivered() ? code : ExitCode.FAILED.number();
  }

  private CommandLine commandLine(String... arguments) {
    CommandLine program = new CommandLine(new Stackside());
    commands(arguments).forEach(program::addSubcommand);
    return program
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
        .setUsageHelpWidth(100)
        .setOut(desk.console().out())
        .setErr(desk.console().err())
        .setParameterExceptionHandler(this::wrongUsage)
        .setExecutionExceptionHandler((e, line, parsed) -> failed(e));
  }

  /** The command that the first argument names, else all: to describe one takes a while. */
  private List<Callable<Integer>> commands(String... arguments) {
    List<Callable<Integer>> all =
        List.of(
            new CheckCommand(desk),
            new DraftCommand(desk),
            new ApproveCommand(desk),
            new IssueCommand(desk),
            new WithdrawCommand(desk),
            new ExplainCommand(desk),
            new StartCommand(desk));
    List<Callable<Integer>> named =
        all.stream()
            .filter(command -> arguments.length > 0 && name(command).equals(arguments[0]))
            .toList();
    return named.isEmpty() ? all : named;
  }

  private static String name(Callable<Integer> command) {
    return command.getClass().getAnnotation(Command.class).name();
  }

  private int wrongUsage(ParameterException e, String[] arguments) {
    desk.console().problem("stackside: " + words(e));
    if (e instanceof UnmatchedArgumentException) {
      UnmatchedArgumentException.printSuggestions(e, desk.console().err());
    }
    desk.console()
        .problem("See '" + e.getCommandLine().getCommandSpec().qualifiedName() + " --help'.");
    return ExitCode.USAGE.number();
  }

  private int failed(Exception e) {
    if (e instanceof UsageException) {
      return say(words(e), ExitCode.USAGE);
    }
    if (e instanceof PublishFailure failure) {
      return say(
          words(failure),
          failure.reason() == PublishFailure.Reason.NOT_OURS ? ExitCode.USAGE : ExitCode.FAILED);
    }
    if (e instanceof BrokenTemplate) {
      return say(words(e), ExitCode.FAILED);
    }
    if (e instanceof IOException refused) {
      String reason = Printable.of(PublishFailure.words(refused)).text();
      return say(
          "the disk refused: " + reason + ". Mend that, then run the command again",
          ExitCode.FAILED);
    }
    return say("Stackside itself failed, not your content. " + traceOf(e), ExitCode.FAILED);
  }

  private static String words(Exception e) {
    return Printable.of(String.valueOf(e.getMessage())).text();
  }

  private int say(String sentence, ExitCode code) {
    desk.console().problem("stackside: " + sentence);
    return code.number();
  }

  /** Keeps the trace for whoever mends it, out of the reader's sight. */
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
