package stackside.model;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where a socket is on the front panel, seen from the front; rows count from the top, columns from
 * the left.
 */
public record PanelPlace(int row, int column) implements Comparable<PanelPlace> {
  private static final Pattern FORM = Pattern.compile("row ([1-9]) column ([1-9]\\d?)");

  /**
   * Reads "row 1 column 2".
   *
   * @throws UnreadableText if the text is not such a place
   */
  public static PanelPlace parse(String text) {
    Matcher form = FORM.matcher(text.strip());
    if (!form.matches()) {
      throw new UnreadableText(
          "'" + text + "' is not a place on a front panel",
          "write it as 'row 1 column 2', counted from the top left, seen from the front");
    }
    return new PanelPlace(Integer.parseInt(form.group(1)), Integer.parseInt(form.group(2)));
  }

  @Override
  public int compareTo(PanelPlace other) {
    return row != other.row
        ? Integer.compare(row, other.row)
        : Integer.compare(column, other.column);
  }

  /** The place as an author writes it. */
  public String text() {
    return "row " + row + " column " + column;
  }
}
