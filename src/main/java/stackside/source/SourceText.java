package stackside.source;

import java.util.List;

/** A content file as read: its name and its lines, without line ends. */
public record SourceText(String file, List<String> lines) {
  public SourceText {
    lines = List.copyOf(lines);
  }

  /** The text of a line, counted from 1; empty past the end. */
  public String line(int number) {
    return number >= 1 && number <= lines.size() ? lines.get(number - 1) : "";
  }
}
