package stackside.cli;

import java.util.PrimitiveIterator;

/**
 * Text as a terminal shows it. Control characters and those that turn the reading direction could
 * play tricks there and are shown as a replacement mark; a tab reaches to the next stop; a wide
 * character takes two columns, a combining one none.
 *
 * @param text what to print
 * @param columns how many columns it takes, if it starts at a given one
 */
record Printable(String text, int columns) {
  private static final int TAB = 4;
  private static final String MARK = "\ufffd";

  static Printable of(String written) {
    return startingAt(0, written);
  }

  /** The text as it looks if it begins at this column, counted from 0. */
  static Printable startingAt(int column, String written) {
    StringBuilder text = new StringBuilder();
    int end = column;
    PrimitiveIterator.OfInt points = written.codePoints().iterator();
    while (points.hasNext()) {
      int point = points.nextInt();
      if (point == '\t') {
        int width = TAB - end % TAB;
        text.append(" ".repeat(width));
        end += width;
      } else if (isUnsafe(point)) {
        text.append(MARK);
        end++;
      } else {
        text.appendCodePoint(point);
        end += width(point);
      }
    }
    return new Printable(text.toString(), end - column);
  }

  private static boolean isUnsafe(int point) {
    return switch (Character.getType(point)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default -> false;
    };
  }

  /** After Unicode Standard Annex 11, by blocks; from memory, for the underline only. */
  private static int width(int point) {
    int type = Character.getType(point);
    if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
      return 0;
    }
    boolean wide =
        Character.isIdeographic(point)
            || (point >= 0x1100 && point <= 0x115f)
            || (point >= 0x2e80 && point <= 0x303e)
            || (point >= 0x3041 && point <= 0xa4cf)
            || (point >= 0xac00 && point <= 0xd7a3)
            || (point >= 0xf900 && point <= 0xfaff)
            || (point >= 0xfe30 && point <= 0xfe6f)
            || (point >= 0xff00 && point <= 0xff60)
            || (point >= 0xffe0 && point <= 0xffe6)
            || (point >= 0x1f300 && point <= 0x1faff);
    return wide ? 2 : 1;
  }
}
