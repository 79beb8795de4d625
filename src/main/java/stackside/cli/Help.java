package stackside.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.help.TextHelpAppendable;
import org.apache.commons.cli.help.TextStyle;

/** What the program says about itself and its commands if somebody asks for help. */
final class Help {
  private static final int WIDEST = 100;
  private static final int NARROWEST = 40;
  private static final int BESIDE = 22;
  private static final char UNBROKEN = '\u00a0';
  private static final String PURPOSE =
      "Turns an endoscopy unit's content on its electrosurgical generators into an induction website"
          + " and room cards.";
  private static final String CODES =
      "Exit codes: 0 no errors, 1 errors in the content, 2 wrong usage, 3 the tool or the disk"
          + " failed, 4 no errors, but cards are held back.";

  private final StringBuilder text = new StringBuilder();

  private final int width;

  private Help(int columns) {
    this.width = Math.max(NARROWEST, Math.min(WIDEST, columns));
  }

  /** About the program as a whole. */
  static String of(List<CommandSpec> commands, Option version, int columns) {
    Help help = new Help(columns);
    help.hanging("Usage: stackside ", "COMMAND");
    help.paragraph(PURPOSE);
    help.blank();
    commands.forEach(each -> help.entry(each.name(), firstSentence(each.purpose())));
    help.blank();
    Stream.of(version, CommandSpec.HELP).forEach(help::option);
    help.entry("COMMAND --help", "Shows what a command takes.");
    return help.closed();
  }

  /** About one command. */
  static String of(CommandSpec form, int columns) {
    Help help = new Help(columns);
    help.hanging("Usage: stackside " + form.name() + " ", usage(form));
    help.paragraph(form.purpose());
    help.blank();
    form.place().ifPresent(place -> help.entry(place.label(), place.meaning()));
    form.options().forEach(help::option);
    help.option(CommandSpec.HELP);
    return help.closed();
  }

  /** No line breaks within a part. */
  private static String usage(CommandSpec form) {
    Stream<String> place =
        form.place().stream().map(each -> optional(each.required(), each.label()));
    Stream<String> options =
        form.options().stream().map(each -> optional(each.isRequired(), written(each)));
    return Stream.concat(place, options)
        .map(part -> part.replace(' ', UNBROKEN))
        .collect(Collectors.joining(" "));
  }

  private static String optional(boolean required, String words) {
    return required ? words : "[" + words + "]";
  }

  private static String written(Option option) {
    String name = "--" + option.getLongOpt();
    return option.hasArg() ? name + " " + option.getArgName() : name;
  }

  private static String firstSentence(String purpose) {
    return purpose.replaceFirst("(?<=[.]) .*", "");
  }

  private void option(Option option) {
    String shortly = option.getOpt() == null ? "" : "-" + option.getOpt() + ", ";
    entry(shortly + written(option), option.getDescription());
  }

  private void entry(String name, String meaning) {
    hanging(("  %-" + BESIDE + "s").formatted(name), meaning);
  }

  private void paragraph(String words) {
    hanging("", words);
  }

  /** Words after a beginning, with their further lines indented below them. */
  private void hanging(String beginning, String words) {
    if (2 * beginning.length() > width) {
      hanging("", beginning.stripTrailing());
      hanging("    ", words);
      return;
    }
    String before = beginning;
    for (String line : wrapped(words, width - beginning.length())) {
      text.append(before).append(line.replace(UNBROKEN, ' ')).append('\n');
      before = " ".repeat(beginning.length());
    }
  }

  private static List<String> wrapped(String words, int width) {
    StringBuilder lines = new StringBuilder();
    try {
      new TextHelpAppendable(lines)
          .printWrapped(words, TextStyle.builder().setMaxWidth(width).get());
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory refused", e);
    }
    return lines.toString().lines().toList();
  }

  private void blank() {
    text.append('\n');
  }

  private String closed() {
    blank();
    paragraph(CODES);
    return text.toString();
  }
}
