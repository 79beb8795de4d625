package stackside.source;

import java.util.List;
import java.util.Optional;

/** One row of a sheet as its author wrote it, whatever it means; empty cells are left out. */
public record Row(Location at, List<Cell> cells) {
  public Row {
    cells = List.copyOf(cells);
  }

  /** What stands in one column of the row. */
  public record Cell(String column, String text, Location at) {}

  /** The cell in a column; absent where it is empty. */
  public Optional<Cell> cell(String column) {
    return cells.stream().filter(cell -> cell.column().equals(column)).findFirst();
  }
}
