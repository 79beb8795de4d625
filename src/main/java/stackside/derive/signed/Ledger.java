package stackside.derive.signed;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import stackside.model.ThingId;
import stackside.source.Location;
import stackside.source.Problem;

/**
 * The list of all signatures ever given, oldest first. Each line carries a seal over itself and the
 * seal before it, so that a line which is edited, removed, put in or moved is noticed. The seals
 * show slips; they do not stop somebody who works out all later seals anew.
 */
public record Ledger(List<Line> lines) {

  /** Where the ledger stands in the content folder. */
  public static final String FILE = "approvals.csv";

  private static final String HEADER = "date,thing,fingerprint,role,initials,seal";
  private static final Pattern FORM =
      Pattern.compile(
          "\\d{4}-\\d\\d-\\d\\d,[a-z-]+:[A-Za-z0-9/-]+,[0-9a-z-]+,[a-z0-9-]+,\\p{L}+,[0-9a-z-]+");

  private static final int MOST_TOLD = 100;

  /** After so many problems a file is no ledger, and the rest of it is not read. */
  private static final int HOPELESS = 10_000;

  /** As the reader of the content counts lines, so that a message shows the right one. */
  private static final Pattern LINE_END = Pattern.compile("\r\n|\r|\n");

  public Ledger {
    lines = List.copyOf(lines);
  }

  /** What one person signed, before it is sealed. */
  public record Entry(
      LocalDate date, ThingId thing, Fingerprint fingerprint, String role, String initials) {

    private Fingerprint seal(String before) {
      return Fingerprint.of(
          Json.items(
              List.of(
                  Json.text(before),
                  Json.text(date.toString()),
                  Json.text(thing.toString()),
                  Json.text(fingerprint.text()),
                  Json.text(role),
                  Json.text(initials))));
    }
  }

  /** One line: an entry under its seal. */
  public record Line(Entry entry, Fingerprint seal) {
    private String text() {
      return String.join(
          ",",
          entry.date().toString(),
          entry.thing().toString(),
          entry.fingerprint().text(),
          entry.role(),
          entry.initials(),
          seal.text());
    }
  }

  /** A ledger as it was read, with all that is wrong with its text. */
  public record Read(Ledger ledger, List<Problem> problems) {
    public Read {
      problems = List.copyOf(problems);
    }
  }

  public static Ledger empty() {
    return new Ledger(List.of());
  }

  /** The ledger with one more line. */
  public Ledger with(Entry entry) {
    List<Line> longer = new ArrayList<>(lines);
    longer.add(new Line(entry, entry.seal(lastSeal())));
    return new Ledger(longer);
  }

  private String lastSeal() {
    return head().map(Fingerprint::text).orElse("");
  }

  /** The seal of the last line, which stands for the whole ledger up to it. */
  public Optional<Fingerprint> head() {
    return lines.isEmpty() ? Optional.empty() : Optional.of(lines.get(lines.size() - 1).seal());
  }

  /** Whether the ledger once ended with this seal. */
  public boolean reaches(Fingerprint seal) {
    return lines.stream().anyMatch(line -> line.seal().equals(seal));
  }

  /** The last line about a thing. */
  public Optional<Line> lastAbout(ThingId thing) {
    return lines.stream()
        .filter(line -> line.entry().thing().equals(thing))
        .reduce((earlier, later) -> later);
  }

  /**
   * This ledger with those lines of another at its end that it lacks, sealed anew in their order.
   * For two people who signed at the same time, each in a copy of the same ledger.
   */
  public Ledger merged(Ledger other) {
    Ledger merged = this;
    List<Entry> own = lines.stream().map(Line::entry).toList();
    for (Line line : other.lines()) {
      if (!own.contains(line.entry())) {
        merged = merged.with(line.entry());
      }
    }
    return merged;
  }

  /** The ledger as its file holds it. */
  public String text() {
    StringBuilder text = new StringBuilder(HEADER).append('\n');
    lines.forEach(line -> text.append(line.text()).append('\n'));
    return text.toString();
  }

  /** Reads the text of a ledger; every line that is not as it was sealed is a problem. */
  public static Read read(String text) {
    List<Line> lines = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    String[] written = LINE_END.split(text, -1);
    if (!written[0].equals(HEADER)) {
      problems.add(altered(1, written[0], "the header of the ledger is not '" + HEADER + "'"));
    }
    int otherLineEnd = text.indexOf('\r');
    if (otherLineEnd >= 0) {
      int line = LINE_END.split(text.substring(0, otherLineEnd), -1).length;
      problems.add(
          altered(line, written[line - 1], "this line ends as the ledger's lines never do"));
    }
    String before = "";
    for (int i = 1; i < written.length - 1 && problems.size() < HOPELESS; i++) {
      Optional<Line> line = line(written[i]);
      if (line.isEmpty()) {
        problems.add(altered(i + 1, written[i], "this is no line of a ledger"));
        continue;
      }
      if (!line.get().entry().seal(before).equals(line.get().seal())) {
        problems.add(altered(i + 1, written[i], BROKEN));
      }
      before = line.get().seal().text();
      lines.add(line.get());
    }
    String rest = written[written.length - 1];
    if (written.length == 1 || !rest.isEmpty()) {
      problems.add(altered(written.length, rest, "the last line of the ledger has no line end"));
    }
    return new Read(new Ledger(lines), atMost(problems));
  }

  /** Of a file that is no ledger at all, the first lines say enough. */
  private static List<Problem> atMost(List<Problem> problems) {
    int more = problems.size() - MOST_TOLD;
    if (more <= 0) {
      return problems;
    }
    List<Problem> told = new ArrayList<>(problems.subList(0, MOST_TOLD));
    int line = problems.get(MOST_TOLD).at().line();
    told.add(
        altered(
            line, "", "at least " + more + " more things are wrong with the ledger from here on"));
    return told;
  }

  private static final String BROKEN =
      "the seal does not fit: this line or the one before it was edited, removed, put in or moved"
          + " after it was signed";

  private static Optional<Line> line(String text) {
    if (!FORM.matcher(text).matches()) {
      return Optional.empty();
    }
    String[] cells = text.split(",", -1);
    Optional<ThingId> thing = ThingId.parse(cells[1]);
    boolean whole =
        thing.isPresent()
            && isDate(cells[0])
            && Fingerprint.isFingerprint(cells[2])
            && Fingerprint.isFingerprint(cells[5]);
    return whole
        ? Optional.of(
            new Line(
                new Entry(
                    LocalDate.parse(cells[0]),
                    thing.get(),
                    new Fingerprint(cells[2]),
                    cells[3],
                    cells[4]),
                new Fingerprint(cells[5])))
        : Optional.empty();
  }

  private static boolean isDate(String text) {
    try {
      LocalDate.parse(text);
      return true;
    } catch (java.time.format.DateTimeParseException e) {
      return false;
    }
  }

  private static Problem altered(int line, String text, String message) {
    return LedgerFaults.ALTERED
        .at(new Location(FILE, line, 1, text.replace("\uFEFF", "").length()), message)
        .help("restore the ledger from a copy; signatures are only ever added, by 'approve'");
  }
}
