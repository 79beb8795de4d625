package stackside.cli;

import java.io.IOException;

/** What the program was asked to do, ready to be done once. */
interface Command {
  ExitCode run() throws IOException, UsageException;

  /** Makes a command of what stands on the line. */
  interface Maker {
    Command of(CommandContext desk, Arguments given) throws UsageException;
  }
}
