package stackside.cli;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.DefaultParser;
import org.apache.commons.cli.MissingArgumentException;
import org.apache.commons.cli.MissingOptionException;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;
import org.apache.commons.cli.ParseException;
import org.apache.commons.cli.UnrecognizedOptionException;
import stackside.content.NearNames;

/**
 * How a command is written: its name and what may follow it.
 *
 * @param purpose what it does, in sentences for whoever asks for help
 * @param place what stands there without an option before it, if anything may
 */
record CommandSpec(String name, String purpose, Optional<Place> place, List<Option> options) {

  /** The argument that is written without an option's name. */
  record Place(String label, boolean required, String meaning) {}

  /** The option that every command understands. {@link Cli} handles it. */
  static final Option HELP =
      Option.builder("h").longOpt("help").desc("Shows this, and does nothing else.").get();

  CommandSpec {
    options = List.copyOf(options);
  }

  /** An option that takes a value. */
  static Option option(String name, String label, String meaning) {
    return Option.builder().longOpt(name).hasArg().argName(label).desc(meaning).get();
  }

  /** An option that must be given. */
  static Option required(String name, String label, String meaning) {
    Option option = option(name, label, meaning);
    option.setRequired(true);
    return option;
  }

  /** An option without a value. */
  static Option mark(String name, String meaning) {
    return Option.builder().longOpt(name).desc(meaning).get();
  }

  /** Reads what follows the name of the command. */
  Arguments read(List<String> arguments) throws UsageException {
    Options known = new Options();
    options.forEach(known::addOption);
    CommandLine line;
    try {
      line =
          DefaultParser.builder()
              .setAllowPartialMatching(false)
              .setStripLeadingAndTrailingQuotes(false)
              .get()
              .parse(known, arguments.toArray(String[]::new));
    } catch (ParseException e) {
      throw new UsageException(words(e) + see());
    }
    List<String> places = line.getArgList();
    if (places.size() > place.stream().count()) {
      throw new UsageException(
          "unexpected argument '" + places.get(places.size() - 1) + "'" + see());
    }
    if (places.isEmpty() && place.filter(Place::required).isPresent()) {
      throw new UsageException("name the " + place.get().label() + see());
    }
    return new Arguments(line);
  }

  private String words(ParseException e) {
    if (e instanceof UnrecognizedOptionException unknown) {
      return unknown(unknown.getOption());
    }
    if (e instanceof MissingArgumentException missing) {
      return "--" + missing.getOption().getLongOpt() + " needs a value";
    }
    if (e instanceof MissingOptionException missing) {
      List<String> names = new ArrayList<>();
      for (Object option : missing.getMissingOptions()) {
        names.add("--" + option);
      }
      return "give " + NearNames.quoted(names, " and ");
    }
    return String.valueOf(e.getMessage());
  }

  private String unknown(String given) {
    Collection<String> names =
        Stream.concat(options.stream(), Stream.of(HELP)).map(o -> "--" + o.getLongOpt()).toList();
    List<String> near = NearNames.of(given.replaceFirst("=.*", ""), names);
    return "there is no option '"
        + given
        + "'"
        + (near.isEmpty() ? "" : "; " + NearNames.question(near));
  }

  private String see() {
    return "; 'stackside " + name + " --help' tells more";
  }
}
