package stackside.inspect;

import java.util.ArrayList;
import java.util.List;

/**
 * One row of a card's table as a screen reader meets it.
 *
 * @param scope what the row answers
 * @param values the other cells, in order
 */
record TableRow(String scope, List<String> values) {

  TableRow {
    values = List.copyOf(values);
  }

  /** The rows of the card, the head left out. */
  static List<TableRow> of(Inspection seen) {
    List<List<StructureElement>> rows = new ArrayList<>();
    for (StructureElement element : seen.structure()) {
      if (element.role().equals("TR")) {
        rows.add(new ArrayList<>());
      } else if (element.role().equals("TD") || element.role().equals("TH")) {
        rows.get(rows.size() - 1).add(element);
      }
    }
    return rows.stream()
        .filter(row -> row.stream().anyMatch(cell -> cell.role().equals("TD")))
        .map(TableRow::row)
        .toList();
  }

  private static TableRow row(List<StructureElement> cells) {
    List<String> texts = cells.stream().map(StructureElement::text).toList();
    return new TableRow(texts.get(0), texts.subList(1, texts.size()));
  }
}
