package stackside.inspect;

import java.util.ArrayList;
import java.util.List;

/**
 * One answer of a card's table as a screen reader meets it: a row that says what is answered, then
 * the row of values.
 *
 * @param scope what the row answers
 * @param values the cells, in order
 */
record TableRow(String scope, List<String> values) {

  TableRow {
    values = List.copyOf(values);
  }

  /** The answers of the card, the head left out. */
  static List<TableRow> of(Inspection seen) {
    List<List<StructureElement>> rows = new ArrayList<>();
    for (StructureElement element : seen.structure()) {
      if (element.role().equals("TR")) {
        rows.add(new ArrayList<>());
      } else if (element.role().equals("TD") || element.role().equals("TH")) {
        rows.get(rows.size() - 1).add(element);
      }
    }
    List<TableRow> answers = new ArrayList<>();
    String scope = "";
    for (List<StructureElement> row : rows) {
      if (row.stream().allMatch(cell -> cell.role().equals("TD"))) {
        answers.add(new TableRow(scope, row.stream().map(StructureElement::text).toList()));
      } else {
        scope = row.get(0).text();
      }
    }
    return List.copyOf(answers);
  }
}
