package stackside.content;

import java.util.List;
import java.util.Optional;

/**
 * A row of the program readings. A pedal without a mode is written as {@code unassigned} or left
 * empty, and then has neither level nor limit.
 */
record PedalRow(SourceNode.Mapping row) {
  private static final String MODE = "mode";
  private static final List<String> SETTINGS = List.of("level", "limit");

  /** The row in a form that can be bound: an unassigned pedal has no mode. */
  static SourceNode readable(SourceNode piece, Findings findings) {
    return piece instanceof SourceNode.Mapping row ? new PedalRow(row).readable(findings) : piece;
  }

  private SourceNode readable(Findings findings) {
    if (cell(MODE).filter(mode -> !mode.text().strip().equals("unassigned")).isPresent()) {
      return row;
    }
    SETTINGS.forEach(name -> cell(name).ifPresent(cell -> refuse(name, cell, findings)));
    return new SourceNode.Mapping(
        row.at(),
        row.entries().stream().filter(entry -> !entry.key().text().equals(MODE)).toList());
  }

  private static void refuse(String name, SourceNode.Scalar cell, Findings findings) {
    findings.add(
        ReadingFaults.NO_SENSE
            .at(cell.at(), "an unassigned pedal has a " + name + " here, " + Quote.of(cell.text()))
            .help("write the mode that was shown, or leave the " + name + " empty"));
  }

  private Optional<SourceNode.Scalar> cell(String column) {
    return row.entries().stream()
        .filter(entry -> entry.key().text().equals(column))
        .map(SourceNode.Entry::value)
        .filter(SourceNode.Scalar.class::isInstance)
        .map(SourceNode.Scalar.class::cast)
        .findFirst();
  }
}
