package stackside.content;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import stackside.source.Location;
import stackside.source.Problem;

/** Reads a CSV file into pieces: one group of keys a row, the keys being the columns' names. */
final class CsvTable {
  private static final int MOST_ROWS = 40_000;

  private final TextFile file;
  private final RecordForm form;
  private final Findings findings;
  private final CellPlaces places;
  private final List<Piece> rows = new ArrayList<>();

  private record Column(String name, int index) {}

  private CsvTable(TextFile file, RecordForm form, Findings findings) {
    this.file = file;
    this.form = form;
    this.findings = findings;
    this.places = new CellPlaces(file);
  }

  /** The rows; absent where nothing of the file can be used. */
  static Optional<List<Piece>> read(TextFile file, RecordForm form, Findings findings) {
    CsvTable table = new CsvTable(file, form, findings);
    return table.readAll() ? Optional.of(table.rows) : Optional.empty();
  }

  private boolean readAll() {
    int lines = file.source().lines().size();
    if (lines > MOST_ROWS) {
      findings.add(
          ReadingFaults.FILE_TOO_LARGE
              .at(Location.startOf(file.name()), "the file has more than " + MOST_ROWS + " lines")
              .help("look for something pasted into it by mistake"));
      return false;
    }
    Optional<Problem> quotes = places.mistakeInQuotes();
    if (quotes.isPresent()) {
      findings.add(quotes.orElseThrow());
      return false;
    }
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .skipEmptyLines(true)
            .ignoreDifferentFieldCount(true)
            .ofCsvRecord(file.text())) {
      return readAll(reader.iterator());
    } catch (CsvParseException e) {
      findings.add(
          ReadingFaults.NOT_CSV
              .at(Location.startOf(file.name()), "the file cannot be read as CSV")
              .help("save the sheet as CSV with commas and UTF-8"));
      return false;
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException("a text in memory cannot fail", e);
    }
  }

  private boolean readAll(Iterator<CsvRecord> records) {
    CsvRecord header = records.next();
    List<Column> columns = columns(header);
    if (columns.isEmpty()) {
      return false;
    }
    while (records.hasNext()) {
      row(records.next(), columns, header.getFieldCount());
    }
    return true;
  }

  /** The columns that the program knows, empty if one that it needs is missing. */
  private List<Column> columns(CsvRecord header) {
    List<Location> cells = places.recordAt((int) header.getStartingLineNumber());
    Location whole = file.toEndOfLine(cells.get(0).line(), 1);
    if (header.getFieldCount() == 1 && header.getField(0).contains(";")) {
      findings.add(
          ReadingFaults.NOT_CSV
              .at(whole, "the columns are separated by semicolons")
              .help("save the sheet as CSV with commas"));
      return List.of();
    }
    List<Column> columns = new ArrayList<>();
    List<String> unknown = new ArrayList<>();
    for (int i = 0; i < header.getFieldCount(); i++) {
      column(header.getField(i).strip(), i, cells.get(i), columns, unknown);
    }
    return missing(whole, columns, unknown) ? List.of() : columns;
  }

  private void column(
      String name, int index, Location at, List<Column> columns, List<String> unknown) {
    if (columns.stream().anyMatch(known -> known.name().equals(name))) {
      findings.add(
          ReadingFaults.WRITTEN_TWICE
              .at(at, "the column " + Quote.of(name) + " stands there twice")
              .help("remove one of the two columns"));
    } else if (form.keys().contains(name)) {
      columns.add(new Column(name, index));
    } else {
      unknown.add(name);
      findings.add(
          ReadingFaults.UNKNOWN_COLUMN
              .at(at, name.isEmpty() ? "a column has no name" : "unknown column " + Quote.of(name))
              .help(
                  NearNames.questionOr(
                      "the columns here are " + String.join(", ", form.keys()),
                      name,
                      form.keys())));
    }
  }

  private boolean missing(Location header, List<Column> columns, List<String> unknown) {
    boolean missing = false;
    for (RecordForm.Slot slot : form.slots()) {
      boolean there = columns.stream().anyMatch(known -> known.name().equals(slot.key()));
      if (slot.written() && slot.required() && !there) {
        missing = true;
        if (unknown.stream()
            .noneMatch(name -> NearNames.of(name, form.keys()).contains(slot.key()))) {
          findings.add(
              ReadingFaults.MISSING_COLUMN
                  .at(header, "the column " + Quote.of(slot.key()) + " is missing")
                  .help("the columns here are " + String.join(", ", form.keys())));
        }
      }
    }
    return missing;
  }

  private void row(CsvRecord row, List<Column> columns, int width) {
    List<Location> cells = places.recordAt((int) row.getStartingLineNumber());
    if (row.getFields().stream().allMatch(String::isBlank)) {
      return;
    }
    Location whole = file.toEndOfLine(cells.get(0).line(), 1);
    if (row.getFieldCount() != width) {
      Piece.Refused refused =
          new Piece.Refused(
              whole,
              ReadingFaults.NOT_CSV
                  .at(
                      whole,
                      "this row has "
                          + row.getFieldCount()
                          + " cells and the header row has "
                          + width)
                  .help(
                      "put a text with a comma in double quotes, and keep a comma for each empty cell"));
      rows.add(refused);
      return;
    }
    List<Piece.Entry> entries =
        columns.stream().flatMap(column -> entry(row, cells, column).stream()).toList();
    rows.add(new Piece.Mapping(whole, entries));
  }

  private Optional<Piece.Entry> entry(CsvRecord row, List<Location> cells, Column column) {
    String text = row.getField(column.index());
    if (text.isBlank() && !form.slot(column.name()).orElseThrow().required()) {
      return Optional.empty();
    }
    Location at = cells.get(column.index());
    Piece.Style style = Piece.Style.CELL;
    return Optional.of(
        new Piece.Entry(
            new Piece.Scalar(at, column.name(), style, at.line()),
            new Piece.Scalar(at, text, style, at.line())));
  }
}
