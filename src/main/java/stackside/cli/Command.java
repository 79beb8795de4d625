package stackside.cli;

import java.io.IOException;

/** What the program was asked to do. It can run once. */
interface Command {
  ExitCode run() throws IOException, UsageException;

  /** Makes a command from what is on the line. */
  interface Maker {
    Command of(CommandContext desk, Arguments given) throws UsageException;
  }
}
