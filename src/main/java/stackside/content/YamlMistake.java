package stackside.content;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import stackside.source.Location;
import stackside.source.Problem;

/**
 * A mistake in the form of a YAML file, in words for somebody who has never read YAML's
 * specification.
 *
 * @param before what is on the line before the place
 * @param open where the part began that is not closed or not finished
 */
record YamlMistake(
    Location at, String before, Optional<Location> open, String context, String complaint) {

  static YamlMistake in(TextFile file, YAMLException exception) {
    if (!(exception instanceof MarkedYAMLException marked)) {
      String complaint = String.valueOf(exception.getMessage());
      return new YamlMistake(Location.startOf(file.name()), "", Optional.empty(), "", complaint);
    }
    Optional<Location> open =
        Optional.ofNullable(marked.getContextMark()).map(mark -> character(file, mark));
    Location at =
        Optional.ofNullable(marked.getProblemMark())
            .map(mark -> character(file, mark))
            .or(() -> open)
            .orElse(Location.startOf(file.name()));
    return new YamlMistake(
        at,
        file.source().line(at.line()).substring(0, at.column() - 1),
        open,
        marked.getContext() == null ? "" : marked.getContext(),
        marked.getProblem() == null ? "" : marked.getProblem());
  }

  private static Location character(TextFile file, Mark mark) {
    Location at = place(file, mark, mark);
    int left = file.source().line(at.line()).length() - at.column() + 1;
    return file.at(at.line(), at.column(), Math.max(0, Math.min(1, left)));
  }

  /** The place of two marks of YAML, whose columns count characters and not UTF-16 units. */
  static Location place(TextFile file, Mark from, Mark to) {
    int lines = file.source().lines().size();
    int line = Math.min(from.getLine() + 1, lines);
    int column = from.getLine() >= lines ? 1 : units(file, line, from.getColumn()) + 1;
    if (to.getLine() == from.getLine()) {
      return file.at(line, column, Math.max(0, units(file, line, to.getColumn()) + 1 - column));
    }
    return file.toEndOfLine(line, column);
  }

  private static int units(TextFile file, int line, int characters) {
    String text = file.source().line(line);
    int count = text.codePointCount(0, text.length());
    return text.offsetByCodePoints(0, Math.min(characters, count));
  }

  /** The lines that may hold its cause, the likeliest first. */
  List<Integer> lines() {
    return Stream.of(open.map(Location::line), Optional.of(at.line()), Optional.of(at.line() - 1))
        .flatMap(Optional::stream)
        .filter(line -> line > 0)
        .toList();
  }

  Problem problem() {
    if (complaint.contains("mapping values are not allowed")) {
      return before.contains(": ")
          ? plain("there is a second colon in this line", "put a text with ': ' in it in quotes")
          : indented("this line does not fit under the line above it");
    }
    if (complaint.contains("could not find expected ':'")) {
      return fromOpen("this line has no colon after its key", "write 'key: value'");
    }
    if (complaint.contains("expected ',' or ']'")) {
      return unclosed("a list in square brackets", "'['", "','  between two of its items");
    }
    if (complaint.contains("expected ',' or '}'")) {
      return unclosed("a group in curly brackets", "'{'", "',' between two of its keys");
    }
    if (complaint.contains("unexpected end of stream") && context.contains("quoted scalar")) {
      return fromOpen("a quotation mark is opened here and never closed", "close it");
    }
    if (complaint.contains("unexpected document separator")) {
      return fromOpen("a quotation mark is opened here and never closed", "close it");
    }
    if (context.contains("double-quoted scalar")) {
      return plain(
          "a backslash in double quotes begins something unknown here",
          "put the text in single quotes");
    }
    if (complaint.contains("cannot start any token")) {
      return plain(
          "a text cannot begin with this character unless it is in quotes",
          "put the text in quotes");
    }
    if (complaint.contains("expected <block end>")
        || complaint.contains("expected '<document start>'")) {
      return indented("this line does not fit under the lines above it");
    }
    if (complaint.contains("sequence entries are not allowed")) {
      return indented("an item of a list begins where there can be none");
    }
    if (complaint.contains("mapping keys are not allowed")) {
      return plain("a question mark begins this text", "put the text in quotes");
    }
    if (context.contains("tag")
        || context.contains("directive")
        || context.contains("anchor")
        || context.contains("alias")) {
      return plain(
          "a text cannot begin with '!', '&', '*' or '%' unless it is in quotes",
          "put the text in quotes");
    }
    return plain(
        "this line cannot be read as YAML: " + words(complaint),
        "look at colons, quotes, brackets and indents of this line and the one above");
  }

  private Problem plain(String message, String help) {
    return ReadingFaults.NOT_YAML.at(at, message).help(help);
  }

  private Problem fromOpen(String message, String help) {
    return ReadingFaults.NOT_YAML.at(open.orElse(at), message).help(help);
  }

  private Problem indented(String message) {
    return plain(message, "begin keys of one group, and hyphens of one list, in the same column");
  }

  private Problem unclosed(String what, String bracket, String comma) {
    Problem problem =
        plain(
            what + " is not closed before here, or lacks a comma",
            "close the bracket, write "
                + comma.replace("  ", " ")
                + ", or put a text with a comma or bracket in quotes");
    return open.map(place -> problem.note(place, bracket + " opened here")).orElse(problem);
  }

  private static String words(String complaint) {
    String line = complaint.strip().replaceAll("\\s+", " ").replaceAll("[.;]+$", "");
    String small = line.isEmpty() ? "its form is broken" : line;
    return small.substring(0, 1).toLowerCase(Locale.ROOT) + small.substring(1);
  }
}
