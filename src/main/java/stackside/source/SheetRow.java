package stackside.source;

import java.util.List;
import java.util.Optional;

/**
 * One row of a sheet as its author wrote it, before it is interpreted; empty cells are left out.
 */
public record SheetRow(Location at, List<Cell> cells) {
  public SheetRow {
    cells = List.copyOf(cells);
  }

  /** The content of the row in one column. */
  public record Cell(String column, String text, Location at) {}

  /** The cell in a column; absent if it is empty. */
  public Optional<Cell> cell(String column) {
    return cells.stream().filter(cell -> cell.column().equals(column)).findFirst();
  }
}
