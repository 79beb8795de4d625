package stackside.cli;

import java.util.Locale;

/** Where the program starts. */
public final class Main {
  private Main() {}

  /**
   * The locale is set first, for the whole process: the PDF library prints numbers by it, and a
   * card made under Arabic settings would be a damaged file.
   */
  public static void main(String[] arguments) {
    Locale.setDefault(Locale.ROOT);
    System.exit(new Cli(System.out, System.err).run(arguments));
  }
}
