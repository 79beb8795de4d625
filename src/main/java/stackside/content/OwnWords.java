package stackside.content;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import stackside.model.Fact;
import stackside.model.Messages;

/** Reads the files with which a unit replaces some of the program's, words line by line. */
final class OwnWords {
  private static final Pattern PUT_IN = Pattern.compile("\\{\\d+}|\\[\\d+]");

  private final ContentFolder folder;
  private final Findings findings;

  OwnWords(ContentFolder folder, Findings findings) {
    this.folder = folder;
    this.findings = findings;
  }

  /** The texts of all files that could be read, by their path below the templates. */
  Map<String, String> templates() {
    Map<String, String> texts = new TreeMap<>();
    for (String name : folder.templates()) {
      folder.file(name).ifPresent(file -> texts.put(inside(name), file.text()));
    }
    return texts;
  }

  private static String inside(String name) {
    return name.substring(Layout.TEMPLATES.length() + 1);
  }

  /** The unit's words in its own language. Words in any other language have no reader. */
  Map<String, Fact<String>> words(String language) {
    String wanted = Layout.TEMPLATES + "/words/" + language + ".txt";
    folder.templates().stream()
        .filter(name -> Layout.isWords(inside(name)) && !name.equals(wanted))
        .forEach(folder::replacesNothing);
    Map<String, Fact<String>> words = new TreeMap<>();
    folder.file(wanted).ifPresent(file -> read(file, words));
    return words;
  }

  private void read(TextFile file, Map<String, Fact<String>> words) {
    Map<String, String> known = Messages.english();
    int number = 0;
    for (String line : file.source().lines()) {
      number++;
      if (Messages.saysSomething(line)) {
        read(file, number, line, known, words);
      }
    }
  }

  private void read(
      TextFile file,
      int number,
      String line,
      Map<String, String> known,
      Map<String, Fact<String>> words) {
    int equals = line.indexOf('=');
    if (equals < 0) {
      findings.add(
          ReadingFaults.NO_SENSE
              .at(file.toEndOfLine(number, 1), "this line has no '='")
              .help("write the key, '=' and the words"));
      return;
    }
    Fact<String> key = part(file, number, line, 0, equals);
    Fact<String> said = part(file, number, line, equals + 1, line.length());
    if (!known.containsKey(key.value())) {
      findings.add(
          ReadingFaults.UNKNOWN_KEY
              .at(key.at(), "the program says nothing under " + Quote.of(key.value()))
              .help(
                  NearNames.questionOr(
                      "take a key from the program's own file of words",
                      key.value(),
                      known.keySet())));
    } else if (said.value().isEmpty()) {
      findings.add(
          ReadingFaults.NO_VALUE
              .at(key.at(), Quote.of(key.value()) + " has no words")
              .help("write them, or remove the line to keep the program's own"));
    } else {
      compare(said, known.getOrDefault(key.value(), ""));
      Fact<String> earlier = words.putIfAbsent(key.value(), said);
      if (earlier != null) {
        findings.add(
            ReadingFaults.WRITTEN_TWICE
                .at(key.at(), Quote.of(key.value()) + " has words already")
                .note(earlier.at(), "first written here")
                .help("remove one of the two"));
      }
    }
  }

  private static Fact<String> part(TextFile file, int number, String line, int from, int to) {
    String text = line.substring(from, to);
    int blank = text.length() - text.stripLeading().length();
    String bare = text.strip();
    return new Fact<>(bare, file.at(number, from + blank + 1, bare.length()));
  }

  /**
   * Each value that the program fills into its own words must have a place in these too, and
   * nothing else may.
   */
  private void compare(Fact<String> said, String usual) {
    Set<String> wanted = places(usual);
    Set<String> found = places(said.value());
    if (!found.equals(wanted)) {
      String message =
          found.containsAll(wanted)
              ? "the program fills in nothing at " + first(found, wanted)
              : "these words have no place for " + first(wanted, found);
      findings.add(
          ReadingFaults.NO_SENSE.at(said.at(), message).help("the program says: " + usual));
    }
  }

  private static String first(Set<String> of, Set<String> without) {
    return of.stream().filter(each -> !without.contains(each)).findFirst().orElseThrow();
  }

  private static Set<String> places(String words) {
    return PUT_IN
        .matcher(words)
        .results()
        .map(MatchResult::group)
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
