package stackside.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The program as a whole; it does nothing without a command. */
@Command(
    name = "stackside",
    mixinStandardHelpOptions = true,
    versionProvider = Stackside.Version.class,
    scope = CommandLine.ScopeType.INHERIT,
    synopsisSubcommandLabel = "COMMAND",
    description =
        "Turns an endoscopy unit's content on its electrosurgical generators into an induction"
            + " website and room cards.",
    footer = {
      "",
      "Exit codes: 0 no errors, 1 errors in the content, 2 wrong usage, 3 the tool or the disk"
          + " failed."
    })
final class Stackside implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    throw new ParameterException(spec.commandLine(), "say which command to run");
  }

  /** The version, where the program runs from its jar. */
  static final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = Stackside.class.getPackage().getImplementationVersion();
      return new String[] {"Stackside " + (version == null ? "from its classes" : version)};
    }
  }
}
