package stackside.hostile;

import java.util.List;
import java.util.Random;

/** Corrupts the text of a file at random places, regardless of its meaning. */
final class Slips {
  private static final List<String> CRUMBS =
      List.of(
          "[",
          "]",
          "{",
          "}",
          ":",
          ": ",
          "- ",
          "\n",
          "\n  ",
          ",",
          "\"",
          "'",
          "|",
          ">",
          "&a ",
          "*a",
          "!!x ",
          "<<: ",
          "#",
          "? ",
          "%",
          "@",
          "`",
          "\t",
          "---\n",
          "...\n",
          "\u0000",
          "\uFEFF",
          "\u2028",
          "\u202E",
          "\\",
          "\"\\u00",
          "0",
          "012",
          "1e999",
          "-1",
          "99999999999",
          "~",
          "null",
          "yes",
          "no",
          "NaN",
          "<b>",
          "](",
          "[x](machine:",
          "![",
          "```",
          "> ",
          "|-",
          "a".repeat(300),
          "𝕊",
          "é",
          "\r",
          "\r\n",
          "\u001B[2J",
          "FILL-IN",
          " to ",
          " and over",
          "under ",
          "0 W",
          "1e308 W",
          "9999-99-99",
          "javascript:alert(1)",
          "https://[",
          "%s",
          "{0}",
          "${7*7}",
          "$1",
          "\\\\E",
          "ﷺ",
          "\uD800",
          "🜚".repeat(20));

  private final Random chance;

  Slips(Random chance) {
    this.chance = chance;
  }

  /** The text with one to four slips; other lines come from another file. */
  String in(String text, String other) {
    StringBuilder broken = new StringBuilder(text);
    int times = 1 + chance.nextInt(4);
    for (int i = 0; i < times; i++) {
      if (chance.nextInt(3) == 0) {
        lines(broken, other);
      } else {
        characters(broken);
      }
    }
    return broken.toString();
  }

  private void characters(StringBuilder broken) {
    int at = chance.nextInt(broken.length() + 1);
    int end = Math.min(broken.length(), at + chance.nextInt(12));
    switch (chance.nextInt(6)) {
      case 0 -> broken.delete(at, end);
      case 1 -> broken.insert(at, broken.substring(at, end));
      case 2 -> broken.replace(at, end, crumb());
      case 3 -> broken.setLength(at);
      case 4 -> broken.insert(at, (char) chance.nextInt(Character.MAX_VALUE));
      default -> broken.insert(at, crumb());
    }
  }

  private void lines(StringBuilder broken, String other) {
    List<String> lines = broken.toString().lines().toList();
    int from = startOfLine(broken);
    int to = Math.max(from, broken.indexOf("\n", from) + 1);
    switch (chance.nextInt(5)) {
      case 0 -> broken.delete(from, to);
      case 1 -> broken.insert(from, broken.substring(from, to));
      case 2 -> broken.insert(from, one(other.lines().toList()) + "\n");
      case 3 -> broken.insert(from, one(lines) + "\n");
      default -> broken.insert(from, " ".repeat(1 + chance.nextInt(5)));
    }
  }

  private int startOfLine(StringBuilder text) {
    return text.lastIndexOf("\n", chance.nextInt(text.length() + 1)) + 1;
  }

  private String one(List<String> lines) {
    return lines.isEmpty() ? "" : lines.get(chance.nextInt(lines.size()));
  }

  /** A text made of fragments only. */
  String rubbish() {
    StringBuilder text = new StringBuilder();
    int pieces = chance.nextInt(40);
    for (int i = 0; i < pieces; i++) {
      text.append(crumb());
      text.append(chance.nextInt(3) == 0 ? "id: a" : "");
    }
    return text.toString();
  }

  private String crumb() {
    return CRUMBS.get(chance.nextInt(CRUMBS.size()));
  }
}
