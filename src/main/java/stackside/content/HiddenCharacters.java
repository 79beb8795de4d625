package stackside.content;

import java.util.Locale;
import stackside.source.Location;
import stackside.source.Problem;

/**
 * Characters that nobody sees and that change what a text means: control characters, marks that
 * turn the direction of writing, separators of no width, halves of a character.
 */
final class HiddenCharacters {
  private HiddenCharacters() {}

  /** The position of the first one in a line, or -1. */
  static int firstIn(String line) {
    for (int i = 0; i < line.length(); i += Character.charCount(line.codePointAt(i))) {
      if (isHidden(line.codePointAt(i))) {
        return i;
      }
    }
    return -1;
  }

  static boolean isHidden(int character) {
    return switch (Character.getType(character)) {
      case Character.CONTROL -> character != '\t' && character != '\n';
      case Character.FORMAT -> character != 0x200C && character != 0x200D;
      case Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR, Character.SURROGATE -> true;
      default -> (character & 0xFFFE) == 0xFFFE;
    };
  }

  static Problem problem(int character, Location at) {
    return ReadingFaults.HIDDEN_CHARACTER
        .at(at, String.format(Locale.ROOT, "there is a hidden character here (U+%04X)", character))
        .help("delete it and type the text again");
  }
}
