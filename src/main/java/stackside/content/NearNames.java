package stackside.content;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Finds the names that somebody may have meant: at most four. At most a third of the letters
 * differ, or the name is cut short, or its words are in another order. Digits are never guessed.
 */
public final class NearNames {
  private static final int MOST = 4;
  private static final int SHORTEST_PART = 5;
  private static final Pattern NO_DIGIT = Pattern.compile("\\D");

  private NearNames() {}

  private record Near(String name, int distance) {}

  /** The names near to what was written, nearest first. */
  public static List<String> of(String written, Collection<String> known) {
    String word = written.toLowerCase(Locale.ROOT);
    int reach = word.length() / 3;
    String digits = digits(word);
    return known.stream()
        .filter(name -> digits(name).equals(digits))
        .map(name -> new Near(name, steps(word, name.toLowerCase(Locale.ROOT), reach)))
        .filter(near -> near.distance() <= reach)
        .sorted(Comparator.comparingInt(Near::distance).thenComparing(Near::name))
        .map(Near::name)
        .distinct()
        .limit(MOST)
        .toList();
  }

  /** The question that a message asks about near names. */
  public static String question(List<String> names) {
    return "did you mean " + quoted(names, " or ") + "?";
  }

  /** The question about names near to what was written, or these words where none is near. */
  public static String questionOr(String otherwise, String written, Collection<String> known) {
    List<String> near = of(written, known);
    return near.isEmpty() ? otherwise : question(near);
  }

  /** Names in quotes: {@code 'a', 'b' or 'c'}. */
  public static String quoted(List<String> names, String last) {
    List<String> marked = names.stream().map(name -> "'" + name + "'").toList();
    int count = marked.size();
    return count < 2
        ? String.join("", marked)
        : marked.stream().limit(count - 1L).collect(Collectors.joining(", "))
            + last
            + marked.get(count - 1);
  }

  /** How far apart two names are. Beyond the reach the exact distance does not matter. */
  private static int steps(String written, String name, int reach) {
    if (words(written).equals(words(name)) || isMostOf(written, name) || isMostOf(name, written)) {
      return Math.min(1, reach);
    }
    return Math.abs(name.length() - written.length()) > reach ? reach + 1 : distance(written, name);
  }

  /** The words of a name in the order of the alphabet: two may have been swapped. */
  private static List<String> words(String name) {
    return Stream.of(name.split("-", -1)).sorted().toList();
  }

  /** Whether a name is the beginning of another, and at least half of it. */
  private static boolean isMostOf(String part, String whole) {
    return part.length() >= SHORTEST_PART
        && whole.startsWith(part)
        && part.length() * 2 >= whole.length();
  }

  private static String digits(String text) {
    return NO_DIGIT.matcher(text).replaceAll("");
  }

  /**
   * The optimal string alignment distance: letters put in, left out, changed, or swapped with their
   * neighbour.
   */
  static int distance(String a, String b) {
    int[][] steps = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        steps[i][j] = i == 0 ? j : j == 0 ? i : cheapest(steps, a, b, i, j);
      }
    }
    return steps[a.length()][b.length()];
  }

  private static int cheapest(int[][] steps, String a, String b, int i, int j) {
    int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
    int best =
        Math.min(steps[i - 1][j - 1] + change, Math.min(steps[i - 1][j] + 1, steps[i][j - 1] + 1));
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, steps[i - 2][j - 2] + 1) : best;
  }
}
