package stackside.derive.signed;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stackside.model.ThingId;
import stackside.source.Location;
import stackside.source.Problem;

/**
 * The list of everything that was ever decided, oldest first: signatures, and what was issued,
 * withdrawn and lifted. Each line carries a seal over itself and the seal before it, so that a line
 * which is edited, removed, put in or moved is noticed. The seals show slips; they do not stop
 * somebody who works out all later seals anew.
 */
public record Ledger(List<Line> lines) {
  /** Where the ledger stands in the content folder. */
  public static final String FILE = "approvals.csv";

  /** Stands in place of the facts of a thing that its roles agreed to do without. */
  static final String GONE = "gone";

  private static final String HEADER = "date,what,state,basis,role,initials,seal";
  private static final Pattern FORM =
      Pattern.compile(
          "\\d{4}-\\d\\d-\\d\\d,[a-z-]+:[A-Za-z0-9/-]+,[0-9a-z-]+,[0-9a-z-]*,[a-z0-9-]*,\\p{L}*,"
              + "[0-9a-z-]+");
  private static final int CELLS = 7;

  /** After so many problems a file is no ledger, and the rest of it is not read. */
  private static final int HOPELESS = 10_000;

  /** As the reader of the content counts lines, so that a message shows the right one. */
  private static final Pattern LINE_END = Pattern.compile("\r\n|\r|\n");

  public Ledger {
    lines = List.copyOf(lines);
  }

  /** What a line says, before it is sealed. */
  public sealed interface Entry {
    LocalDate day();

    /** What it is about, the state of that, what it rests on, role and initials. */
    List<String> cells();

    /** The fingerprints of what is kept because this line names it. */
    List<String> names();
  }

  /**
   * One role has decided about one thing. Only its latest decision about that thing counts.
   *
   * @param facts what the thing says; absent where it is to be gone
   * @param sheet the signing sheet that was read, with its warnings
   */
  public record Decision(
      LocalDate day,
      ThingId thing,
      Optional<Fingerprint> facts,
      Fingerprint sheet,
      String role,
      String initials)
      implements Entry {
    @Override
    public List<String> cells() {
      return List.of(
          thing.toString(),
          facts.map(Fingerprint::text).orElse(GONE),
          sheet.text(),
          role,
          initials);
    }

    @Override
    public List<String> names() {
      return Stream.concat(facts.stream(), Stream.of(sheet)).map(Fingerprint::text).toList();
    }
  }

  /**
   * Something was done with what hangs on walls, as the register tells in full.
   *
   * @param number counted for each kind from 1, and never given twice
   * @param register the seal of the register's entry about it
   * @param manifest what has been in force since; absent where nothing was known to be
   * @param role nobody's for an issue
   */
  public record Act(
      LocalDate day,
      Deed deed,
      int number,
      Fingerprint register,
      Optional<Fingerprint> manifest,
      String role,
      String initials)
      implements Entry {
    @Override
    public List<String> cells() {
      return List.of(
          deed.word() + ":" + number,
          register.text(),
          manifest.map(Fingerprint::text).orElse(""),
          role,
          initials);
    }

    @Override
    public List<String> names() {
      return Stream.concat(Stream.of(register), manifest.stream()).map(Fingerprint::text).toList();
    }
  }

  /** One line: an entry under its seal. */
  public record Line(Entry entry, Fingerprint seal) {
    private String text() {
      return entry.day() + "," + String.join(",", entry.cells()) + "," + seal.text();
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
    longer.add(new Line(entry, seal(lastSeal(), entry)));
    return new Ledger(longer);
  }

  private static Fingerprint seal(String before, Entry entry) {
    List<Json> sealed = new ArrayList<>();
    sealed.add(Json.text(before));
    sealed.add(Json.text(entry.day().toString()));
    entry.cells().forEach(cell -> sealed.add(Json.text(cell)));
    return Fingerprint.of(Json.items(sealed));
  }

  private String lastSeal() {
    return head().map(Fingerprint::text).orElse("");
  }

  /** The seal of the last line, which stands for the whole ledger up to it. */
  public Optional<Fingerprint> head() {
    return lines.isEmpty() ? Optional.empty() : Optional.of(lines.get(lines.size() - 1).seal());
  }

  /** The day of the last line; no later line may bear an earlier one. */
  public Optional<LocalDate> lastDay() {
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(lines.get(lines.size() - 1).entry().day());
  }

  /** Whether the ledger once ended with this seal. */
  public boolean reaches(Fingerprint seal) {
    return lines.stream().anyMatch(line -> line.seal().equals(seal));
  }

  /** All decisions up to a day, oldest first. */
  public Stream<Decision> decisions(LocalDate on) {
    return lines.stream()
        .map(Line::entry)
        .filter(entry -> !entry.day().isAfter(on))
        .filter(Decision.class::isInstance)
        .map(Decision.class::cast);
  }

  /** All issues, withdrawals and liftings, oldest first. */
  public List<Act> acts() {
    return lines.stream()
        .map(Line::entry)
        .filter(Act.class::isInstance)
        .map(Act.class::cast)
        .toList();
  }

  /** The number of the last act of this kind; 0 where there was none. */
  public int last(Deed deed) {
    return acts().stream().filter(act -> act.deed() == deed).mapToInt(Act::number).max().orElse(0);
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
    List<Problem> unread = new ArrayList<>();
    List<Problem> broken = new ArrayList<>();
    Optional<String> before = Optional.of("");
    for (int i = 1; i < written.length - 1 && unread.size() + broken.size() < HOPELESS; i++) {
      Optional<Line> line = line(written[i]);
      if (line.isEmpty()) {
        unread.add(altered(i + 1, written[i], "this is no line of a ledger"));
        before = Optional.empty();
        continue;
      }
      Ledger.Line read = line.get();
      if (before.filter(seal -> !seal(seal, read.entry()).equals(read.seal())).isPresent()) {
        broken.add(altered(i + 1, written[i], BROKEN));
      }
      before = Optional.of(read.seal().text());
      lines.add(read);
    }
    firstOf(unread).ifPresent(problems::add);
    firstOf(broken).ifPresent(problems::add);
    String rest = written[written.length - 1];
    if (written.length == 1 || !rest.isEmpty()) {
      problems.add(altered(written.length, rest, "the last line of the ledger has no line end"));
    }
    return new Read(new Ledger(lines), problems);
  }

  /** The first of several problems that are alike, with the number of the others. */
  private static Optional<Problem> firstOf(List<Problem> alike) {
    int more = alike.size() - 1;
    return alike.stream()
        .findFirst()
        .map(
            first ->
                more == 0
                    ? first
                    : new Problem(
                        first.fault(),
                        first.at(),
                        first.message()
                            + "; the same is true of "
                            + (more == 1 ? "1 more line" : more + " more lines"),
                        first.notes(),
                        first.help()));
  }

  private static final String BROKEN =
      "the seal does not fit: this line or the one before it was edited, removed, put in or moved"
          + " after it was signed";

  private static Optional<Line> line(String text) {
    if (!FORM.matcher(text).matches()) {
      return Optional.empty();
    }
    List<String> cells = List.of(text.split(",", -1));
    if (!isDate(cells.get(0)) || !Fingerprint.isFingerprint(cells.get(CELLS - 1))) {
      return Optional.empty();
    }
    LocalDate day = LocalDate.parse(cells.get(0));
    Fingerprint seal = new Fingerprint(cells.get(CELLS - 1));
    return act(day, cells)
        .<Entry>map(act -> act)
        .or(() -> decision(day, cells))
        .map(entry -> new Line(entry, seal));
  }

  private static Optional<Act> act(LocalDate day, List<String> cells) {
    String[] what = cells.get(1).split(":", -1);
    boolean whole =
        what[1].matches("[1-9]\\d{0,8}")
            && Fingerprint.isFingerprint(cells.get(2))
            && (cells.get(3).isEmpty() || Fingerprint.isFingerprint(cells.get(3)));
    return Deed.named(what[0])
        .filter(deed -> whole)
        .map(
            deed ->
                new Act(
                    day,
                    deed,
                    Integer.parseInt(what[1]),
                    new Fingerprint(cells.get(2)),
                    Optional.of(cells.get(3))
                        .filter(basis -> !basis.isEmpty())
                        .map(Fingerprint::new),
                    cells.get(4),
                    cells.get(5)));
  }

  private static Optional<Decision> decision(LocalDate day, List<String> cells) {
    boolean gone = cells.get(2).equals(GONE);
    boolean whole =
        (gone || Fingerprint.isFingerprint(cells.get(2)))
            && Fingerprint.isFingerprint(cells.get(3))
            && !cells.get(4).isEmpty()
            && !cells.get(5).isEmpty();
    return ThingId.parse(cells.get(1))
        .filter(thing -> whole)
        .map(
            thing ->
                new Decision(
                    day,
                    thing,
                    gone ? Optional.empty() : Optional.of(new Fingerprint(cells.get(2))),
                    new Fingerprint(cells.get(3)),
                    cells.get(4),
                    cells.get(5)));
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
