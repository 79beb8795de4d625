package stackside.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.source.Location;
import stackside.source.Problem;

/**
 * Puts together what a comma between brackets has torn apart although its author meant one text: a
 * text in curly quotation marks, a number with a decimal comma.
 */
final class TornText {
  private TornText() {}

  /** The entries of a group, where the rest of a torn text stands as keys without values. */
  static List<SourceNode.Entry> rejoined(TextFile file, List<SourceNode.Entry> entries) {
    List<SourceNode.Entry> whole = new ArrayList<>();
    int next = 0;
    while (next < entries.size()) {
      SourceNode.Entry entry = entries.get(next++);
      if (isCurly(entry.value()) && !closes(file, entry.value())) {
        next =
            behindCurly(
                entries.subList(next, entries.size()).stream().map(TornText::last).toList(), next);
      } else if (next < entries.size()) {
        Optional<Problem> comma = decimalComma(file, entry.value(), entries.get(next));
        if (comma.isPresent()) {
          next++;
          entry =
              new SourceNode.Entry(
                  entry.key(), new SourceNode.Refused(entry.value().at(), comma.orElseThrow()));
        }
      }
      whole.add(entry);
    }
    return whole;
  }

  private static String last(SourceNode.Entry entry) {
    String value = entry.value().words();
    return value.isEmpty() ? entry.key().words() : value;
  }

  /** The items of a list, where the rest of a text in curly marks stands as items of its own. */
  static List<SourceNode> joined(TextFile file, List<SourceNode> items) {
    List<SourceNode> whole = new ArrayList<>();
    int next = 0;
    while (next < items.size()) {
      SourceNode item = items.get(next++);
      if (isCurly(item) && !closes(file, item)) {
        next =
            behindCurly(
                items.subList(next, items.size()).stream().map(SourceNode::words).toList(), next);
      }
      whole.add(item);
    }
    return whole;
  }

  /** A text in curly marks with a colon in it looks like a group of one key. */
  static SourceNode withoutPair(SourceNode item) {
    return item instanceof SourceNode.Mapping pair
            && pair.entries().size() == 1
            && isCurly(pair.entries().get(0).value())
            && pair.entries().get(0).key().text().isEmpty()
        ? pair.entries().get(0).value()
        : item;
  }

  private static boolean isCurly(SourceNode piece) {
    return piece instanceof SourceNode.Refused refused
        && refused.problem().fault().equals(ReadingFaults.CURLY_QUOTATION_MARK);
  }

  private static boolean closes(TextFile file, SourceNode piece) {
    Location at = piece.at();
    int start = at.column() - 1;
    String written = file.source().line(at.line());
    return CurlyMarks.end(
        written.substring(start + 1, Math.min(written.length(), start + at.length())));
  }

  /** Where the closing mark stands, or nothing is skipped. */
  private static int behindCurly(List<String> rest, int from) {
    for (int i = 0; i < rest.size(); i++) {
      if (CurlyMarks.end(rest.get(i))) {
        return from + i + 1;
      }
    }
    return from;
  }

  private static Optional<Problem> decimalComma(
      TextFile file, SourceNode value, SourceNode.Entry behind) {
    if (!(value instanceof SourceNode.Scalar number)
        || number.style() != SourceNode.Style.PLAIN
        || !(behind.value() instanceof SourceNode.Scalar nothing)
        || !nothing.text().isEmpty()) {
      return Optional.empty();
    }
    Location from = number.at();
    Location rest = behind.key().at();
    boolean touching =
        from.line() == rest.line() && rest.column() == from.column() + from.length() + 1;
    String written = number.text() + "," + behind.key().text();
    return touching && DecimalComma.in(written) && behind.key().text().matches("\\d.*")
        ? Optional.of(
            DecimalComma.problem(
                file.at(from.line(), from.column(), from.length() + 1 + rest.length()), written))
        : Optional.empty();
  }
}
