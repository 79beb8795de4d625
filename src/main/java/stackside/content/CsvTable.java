package stackside.content;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stackside.source.Location;
import stackside.source.Problem;

/**
 * Reads a CSV file into pieces: each row is a group of keys, and the keys are the names of the
 * columns.
 */
final class CsvTable {
  private static final int MOST_ROWS = 40_000;

  private final TextFile file;
  private final RecordForm form;
  private final Findings findings;
  private final CellPlaces places;
  private final List<SourceNode> rows = new ArrayList<>();

  private record Column(String name, int index) {}

  private record Repeated(Location at, Location earlier) {}

  private CsvTable(TextFile file, RecordForm form, Findings findings) {
    this.file = file;
    this.form = form;
    this.findings = findings;
    this.places = new CellPlaces(file);
  }

  /** The rows, or empty if nothing in the file can be used. */
  static Optional<List<SourceNode>> read(TextFile file, RecordForm form, Findings findings) {
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
    RowMistakes mistakes = new RowMistakes(file, form, header.getFields());
    Map<List<String>, Location> first = new HashMap<>();
    first.put(words(header), header(header));
    List<Repeated> repeated = new ArrayList<>();
    while (records.hasNext()) {
      CsvRecord row = records.next();
      List<Location> cells = places.recordAt((int) row.getStartingLineNumber());
      Location whole = file.toEndOfLine(cells.get(0).line(), 1);
      if (words(row).stream().allMatch(String::isEmpty)) {
        continue;
      }
      Location earlier = first.putIfAbsent(words(row), whole);
      if (earlier != null) {
        repeated.add(new Repeated(whole, earlier));
      } else if (row.getFieldCount() != header.getFieldCount()) {
        rows.add(new SourceNode.Refused(whole, mistakes.of(row.getFields(), cells, whole)));
      } else {
        rows.add(row(row, columns, cells, whole));
      }
    }
    refuse(repeated);
    return true;
  }

  private static List<String> words(CsvRecord row) {
    return row.getFields().stream().map(String::strip).toList();
  }

  private Location header(CsvRecord header) {
    return file.toEndOfLine((int) header.getStartingLineNumber(), 1);
  }

  /** Rows that say the same come from one slip of the hand, however many there are. */
  private void refuse(List<Repeated> repeated) {
    if (repeated.isEmpty()) {
      return;
    }
    Repeated first = repeated.get(0);
    int more = repeated.size() - 1;
    String message =
        "this row is already in the sheet, on line "
            + first.earlier().line()
            + (more == 0 ? "" : ", and so are %d more rows".formatted(more));
    findings.add(
        ReadingFaults.WRITTEN_TWICE
            .at(
                first.at(),
                more == 1 ? message.replace("so are 1 more rows", "so is 1 more") : message)
            .note(first.earlier(), "first written here")
            .help(
                more == 0
                    ? "remove one of the two, or correct it"
                    : "remove the rows that were pasted a second time"));
  }

  /** The columns that the program knows, or none if one that it needs is missing. */
  private List<Column> columns(CsvRecord header) {
    List<Location> cells = places.recordAt((int) header.getStartingLineNumber());
    Location whole = file.toEndOfLine(cells.get(0).line(), 1);
    Optional<Problem> separated = RowMistakes.otherSeparator(file, header.getFields(), whole);
    if (separated.isPresent()) {
      findings.add(separated.orElseThrow());
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
              .at(at, "the column " + Quote.of(name) + " is there twice")
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

  private SourceNode row(
      CsvRecord row, List<Column> columns, List<Location> cells, Location whole) {
    return new SourceNode.Mapping(
        whole, columns.stream().flatMap(column -> entry(row, cells, column).stream()).toList());
  }

  private Optional<SourceNode.Entry> entry(CsvRecord row, List<Location> cells, Column column) {
    String text = row.getField(column.index());
    if (text.isBlank() && !form.slot(column.name()).orElseThrow().required()) {
      return Optional.empty();
    }
    Location at = cells.get(column.index());
    SourceNode.Style style = SourceNode.Style.CELL;
    return Optional.of(
        new SourceNode.Entry(
            new SourceNode.Scalar(at, column.name(), style, at.line()),
            new SourceNode.Scalar(at, text, style, at.line())));
  }
}
