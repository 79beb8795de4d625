package stackside;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stackside.source.Problem;

/**
 * A small edit of a content folder, written as a patch. A line {@code === file} opens an edit of a
 * file; below it {@code -} marks a line that goes, {@code +} one that comes, a blank one that
 * stays. The lines that go or stay must be found exactly once; their indentation is taken from the
 * file. An edit of new lines only is added at the end of its file. {@code === without file} takes a
 * file away. {@code # expect: rule-id} behind a line that comes or stays says what must be found
 * there.
 */
public record ContentEdit(Map<String, List<String>> files, List<Expected> expected) {

  private static final Pattern EXPECT = Pattern.compile("\\s*# expect: (?<ids>[a-z0-9, -]+)$");

  /** A problem that must be found on a line. */
  public record Expected(String file, int line, String id) implements Comparable<Expected> {

    /** Problems in the form in which patches expect them. */
    public static List<Expected> of(List<Problem> problems) {
      return problems.stream()
          .map(p -> new Expected(p.at().file(), p.at().line(), p.fault().id()))
          .distinct()
          .sorted()
          .toList();
    }

    @Override
    public int compareTo(Expected other) {
      return toString().compareTo(other.toString());
    }

    @Override
    public String toString() {
      return "%s:%03d: %s".formatted(file, line, id);
    }
  }

  /** One edit of one file. */
  private record Hunk(String file, List<String> old, List<String> fresh) {}

  /** Applies a patch to a folder's files. */
  public static ContentEdit apply(Map<String, List<String>> base, String patch) {
    Map<String, List<String>> files = new LinkedHashMap<>(base);
    for (String part : ("\n" + patch).split("\n=== ", -1)) {
      if (part.isBlank()) {
        continue;
      }
      List<String> lines = part.lines().toList();
      if (lines.get(0).startsWith("without ")) {
        String gone = lines.get(0).substring("without ".length());
        if (files.remove(gone) == null) {
          throw new AssertionError("no such file to take away: " + gone);
        }
      } else {
        Hunk hunk = hunk(lines);
        files.put(hunk.file(), edited(files.getOrDefault(hunk.file(), List.of()), hunk));
      }
    }
    return withExpectationsTakenOff(files);
  }

  private static Hunk hunk(List<String> lines) {
    List<String> old = new ArrayList<>();
    List<String> fresh = new ArrayList<>();
    for (String line : lines.subList(1, lines.size())) {
      if (line.isEmpty()) {
        continue;
      }
      String text = line.substring(1);
      switch (line.charAt(0)) {
        case '-' -> old.add(text);
        case '+' -> fresh.add(text);
        case ' ' -> {
          old.add(EXPECT.matcher(text).replaceFirst(""));
          fresh.add(text);
        }
        default -> throw new AssertionError("neither -, + nor blank: " + line);
      }
    }
    return new Hunk(lines.get(0).strip(), old, fresh);
  }

  private static List<String> edited(List<String> lines, Hunk hunk) {
    List<String> result = new ArrayList<>(lines);
    if (hunk.old().isEmpty()) {
      result.addAll(hunk.fresh());
      return result;
    }
    int at = onlyPlace(lines, hunk);
    int shift = indentation(bare(lines.get(at))) - indentation(hunk.old().get(0));
    result.subList(at, at + hunk.old().size()).clear();
    result.addAll(at, hunk.fresh().stream().map(line -> shifted(line, shift)).toList());
    return result;
  }

  private static int onlyPlace(List<String> lines, Hunk hunk) {
    List<Integer> places = new ArrayList<>();
    for (int i = 0; i + hunk.old().size() <= lines.size(); i++) {
      if (matches(lines, i, hunk.old())) {
        places.add(i);
      }
    }
    if (places.size() != 1) {
      throw new AssertionError(
          "an edit of %s takes away or keeps these lines, and they must stand there once, one below the other; they stand there %d times:\n%s"
              .formatted(hunk.file(), places.size(), String.join("\n", hunk.old())));
    }
    return places.get(0);
  }

  private static boolean matches(List<String> lines, int from, List<String> old) {
    for (int i = 0; i < old.size(); i++) {
      if (!bare(lines.get(from + i)).strip().equals(old.get(i).strip())) {
        return false;
      }
    }
    return true;
  }

  private static String bare(String line) {
    return EXPECT.matcher(line).replaceFirst("");
  }

  private static int indentation(String line) {
    return line.length() - line.stripLeading().length();
  }

  private static String shifted(String line, int by) {
    return by >= 0 ? " ".repeat(by) + line : line.substring(Math.min(-by, indentation(line)));
  }

  private static ContentEdit withExpectationsTakenOff(Map<String, List<String>> files) {
    List<Expected> expected = new ArrayList<>();
    Map<String, List<String>> bare = new LinkedHashMap<>();
    files.forEach(
        (file, lines) -> {
          List<String> kept = new ArrayList<>();
          for (String line : lines) {
            Matcher mark = EXPECT.matcher(line);
            if (mark.find()) {
              for (String id : mark.group("ids").split(",", -1)) {
                expected.add(new Expected(file, kept.size() + 1, id.strip()));
              }
            }
            kept.add(mark.replaceFirst(""));
          }
          bare.put(file, kept);
        });
    return new ContentEdit(bare, expected.stream().sorted().toList());
  }
}
