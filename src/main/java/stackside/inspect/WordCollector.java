package stackside.inspect;

import java.util.ArrayList;
import java.util.List;

/** Joins letters that follow each other on one line in one face, size and colour. */
final class WordCollector {

  /** Letters whose outlines end flat at the height of capitals. */
  private static final String FLAT_CAPITALS = "EFHIKLMNTVWXYZ";

  /** Letters whose outlines end flat at the height of small letters. */
  private static final String FLAT_SMALL = "vwxyz";

  /** A wider gap, in em, begins new words. */
  private static final double GAP = 0.5;

  /**
   * One letter.
   *
   * @param height of its outline over the base line, in millimetres
   */
  record Letter(
      String text,
      Box box,
      double base,
      double left,
      double right,
      double height,
      double points,
      String font,
      Colour colour,
      List<String> roles,
      boolean upright) {

    boolean follows(Letter before) {
      double em = points * PdfReader.MILLIMETRES;
      return font.equals(before.font)
          && colour.equals(before.colour)
          && roles.equals(before.roles)
          && Math.abs(points - before.points) < 0.01
          && Math.abs(base - before.base) < 0.05
          && left - before.right < GAP * em
          && left - before.left > -0.01;
    }
  }

  private final List<List<Letter>> runs = new ArrayList<>();

  void add(Letter letter) {
    List<Letter> last = runs.isEmpty() ? List.of() : runs.get(runs.size() - 1);
    if (last.isEmpty() || !letter.follows(last.get(last.size() - 1))) {
      last = new ArrayList<>();
      runs.add(last);
    }
    last.add(letter);
  }

  List<PrintedWords> words() {
    List<PrintedWords> words = new ArrayList<>();
    for (List<Letter> run : runs) {
      List<Letter> inked = run.stream().filter(letter -> !letter.text().isBlank()).toList();
      if (!inked.isEmpty()) {
        words.add(words(run, inked));
      }
    }
    return words;
  }

  private static PrintedWords words(List<Letter> run, List<Letter> inked) {
    StringBuilder text = new StringBuilder();
    run.forEach(letter -> text.append(letter.text()));
    Letter first = inked.get(0);
    return new PrintedWords(
        text.toString().strip(),
        inked.stream().map(Letter::box).reduce(Box::with).orElseThrow(),
        first.base(),
        first.points(),
        first.font(),
        first.colour(),
        highest(inked, FLAT_CAPITALS),
        highest(inked, FLAT_SMALL),
        first.roles(),
        inked.stream().allMatch(Letter::upright));
  }

  private static double highest(List<Letter> letters, String among) {
    return letters.stream()
        .filter(letter -> among.contains(letter.text()))
        .mapToDouble(Letter::height)
        .max()
        .orElse(0);
  }
}
