package stackside.content;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import stackside.quantity.Quantity;
import stackside.source.Location;
import stackside.source.Problem;

/** Says why a row of a sheet has more or fewer cells than its header. */
final class RowMistakes {
  private static final Map<Character, String> SEPARATORS = Map.of(';', "semicolons", '\t', "tabs");

  private final TextFile file;
  private final RecordForm form;
  private final List<String> header;
  private final Map<Character, Problem> separated = new HashMap<>();

  RowMistakes(TextFile file, RecordForm form, List<String> header) {
    this.file = file;
    this.form = form;
    this.header = header;
  }

  /** The mistake of a sheet that has no comma between its columns. */
  static Optional<Problem> otherSeparator(TextFile file, List<String> header, Location at) {
    return SEPARATORS.keySet().stream()
        .filter(sign -> header.size() == 1 && header.get(0).indexOf(sign) >= 0)
        .findFirst()
        .map(sign -> separated(at, sign, lines(file, sign, 1).size()));
  }

  /**
   * The mistake of one row. Rows with the same wrong sign between their cells share one mistake.
   */
  Problem of(List<String> fields, List<Location> cells, Location whole) {
    Optional<Character> sign =
        SEPARATORS.keySet().stream()
            .filter(each -> count(file.source().line(whole.line()), each) >= header.size() - 1)
            .filter(each -> header.size() > 1)
            .findFirst();
    if (sign.isPresent()) {
      return separated.computeIfAbsent(sign.orElseThrow(), this::separated);
    }
    return curly(fields, cells)
        .or(() -> decimalComma(fields, cells))
        .orElseGet(() -> otherwise(fields, whole));
  }

  private Problem separated(char sign) {
    List<Integer> lines = lines(file, sign, header.size() - 1);
    return separated(file.toEndOfLine(lines.get(0), 1), sign, lines.size());
  }

  private static Problem separated(Location at, char sign, int lines) {
    String where = lines == 1 ? "in this line" : "here and in " + (lines - 1) + " more lines";
    return ReadingFaults.NOT_CSV
        .at(
            at,
            SEPARATORS.get(sign)
                + " stand between the cells, not commas, "
                + (lines == 2 ? where.replace("lines", "line") : where))
        .help("save the sheet as CSV with commas");
  }

  /** The numbers of the lines that hold a sign at least so many times. */
  private static List<Integer> lines(TextFile file, char sign, int times) {
    List<String> lines = file.source().lines();
    return IntStream.rangeClosed(1, lines.size())
        .filter(number -> count(lines.get(number - 1), sign) >= times)
        .boxed()
        .toList();
  }

  private static long count(String line, char sign) {
    return line.chars().filter(each -> each == sign).count();
  }

  private Optional<Problem> curly(List<String> fields, List<Location> cells) {
    return IntStream.range(0, Math.min(fields.size(), cells.size()))
        .filter(i -> fields.size() > header.size() && CurlyMarks.begin(fields.get(i).strip()))
        .mapToObj(i -> CurlyMarks.problem(cells.get(i)))
        .findFirst();
  }

  /** Two cells that are one number with a comma in it, such as 57 and 5 W where a power belongs. */
  private Optional<Problem> decimalComma(List<String> fields, List<Location> cells) {
    if (fields.size() != header.size() + 1) {
      return Optional.empty();
    }
    return IntStream.range(0, header.size())
        .filter(i -> fields.get(i).strip().matches("\\d+") && takesQuantity(header.get(i).strip()))
        .filter(i -> fields.get(i + 1).matches("\\d+( \\D.*)?"))
        .mapToObj(
            i ->
                DecimalComma.problem(
                    file.at(
                        cells.get(i).line(),
                        cells.get(i).column(),
                        cells.get(i).length() + 1 + cells.get(i + 1).length()),
                    fields.get(i).strip() + "," + fields.get(i + 1).strip()))
        .findFirst();
  }

  private boolean takesQuantity(String column) {
    return form.slot(column)
        .map(RecordForm.Slot::type)
        .filter(ParameterizedType.class::isInstance)
        .map(type -> ((ParameterizedType) type).getActualTypeArguments()[0])
        .filter(RowMistakes::isQuantity)
        .isPresent();
  }

  private static boolean isQuantity(Type type) {
    return type instanceof Class<?> plain && Quantity.class.isAssignableFrom(plain);
  }

  private Problem otherwise(List<String> fields, Location whole) {
    return ReadingFaults.NOT_CSV
        .at(
            whole,
            "this row has %d cells and the header row has %d"
                .formatted(fields.size(), header.size()))
        .help("put a text with a comma in double quotes, and keep a comma for each empty cell");
  }
}
