package stackside.content;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IllformedLocaleException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stackside.model.Asset;
import stackside.model.AtLeastOne;
import stackside.model.Cable;
import stackside.model.Checklist;
import stackside.model.Citation;
import stackside.model.Drill;
import stackside.model.Electrode;
import stackside.model.Fact;
import stackside.model.FootSwitch;
import stackside.model.HandbookPage;
import stackside.model.Instrument;
import stackside.model.Kind;
import stackside.model.LearningPath;
import stackside.model.Lesion;
import stackside.model.LoggedRecord;
import stackside.model.Machine;
import stackside.model.OutputCheck;
import stackside.model.Profile;
import stackside.model.ProgramReading;
import stackside.model.Role;
import stackside.model.Room;
import stackside.model.ServiceEvent;
import stackside.model.Site;
import stackside.model.SiteGroup;
import stackside.model.Step;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.model.UnitDetails;
import stackside.source.Location;
import stackside.source.Problem;
import stackside.source.SheetRow;

/**
 * Reads the files of a folder in the order in which they refer to each other, so that whatever a
 * text names has been read before. Then puts the unit together.
 */
final class UnitAssembly {
  private static final String FORMAT = "1";

  private final ContentFolder folder;
  private final Findings findings;
  private final SymbolTable scope = new SymbolTable();
  private final Mentions mentions;
  private final Mentions mentionsOfPages;
  private final BorrowedSources borrowed;
  private final ProseReader prose;
  private final ValueBinder values;
  private final List<SheetRow> records = new ArrayList<>();

  /** What {@code sites.yaml} holds. */
  @WholeFile
  record SitesFile(Location at, @AtLeastOne List<Site> sites, List<SiteGroup> groups) {}

  /** What {@code lesions.yaml} holds. */
  @WholeFile
  record LesionsFile(Location at, @AtLeastOne List<Step> steps, @AtLeastOne List<Lesion> lesions) {}

  /** What a file of profiles holds. Its machine is the machine of each profile. */
  record ProfilesFile(Location at, SourceNode machine, @AtLeastOne List<SourceNode> profiles) {}

  /**
   * A line of the ledger, which is read for itself elsewhere; here only its role must be one of the
   * unit's.
   */
  record LedgerLine(
      Location at,
      Fact<String> date,
      Fact<String> what,
      Fact<String> state,
      Optional<Fact<String>> basis,
      Optional<Fact<Role>> role,
      Optional<Fact<String>> initials,
      Fact<String> seal) {}

  UnitAssembly(ContentFolder folder, Findings findings) {
    this.folder = folder;
    this.findings = findings;
    this.mentions = new Mentions(findings);
    this.mentionsOfPages = new Mentions(findings);
    this.borrowed = new BorrowedSources(folder, findings, scope);
    this.prose = new ProseReader(findings, mentions);
    this.values = new ValueBinder(findings, scope, mentions, prose);
  }

  Optional<Unit> assemble() {
    Optional<SourceNode> unitFile = yaml(Layout.UNIT);
    if (unitFile.isPresent() && isOfAnotherFormat(unitFile.orElseThrow())) {
      return Optional.empty();
    }
    Optional<UnitDetails> details =
        unitFile
            .flatMap(file -> record(UnitDetails.class, file))
            .filter(each -> isLanguage(each.language()));
    if (details.isEmpty()) {
      markIncomplete(Layout.Single.UNIT_DETAILS);
    }
    readThings();
    List<ProgramReading> readings = rows(Layout.Single.PROGRAM_READINGS, ProgramReading.class);
    List<ServiceEvent> events = rows(Layout.Single.SERVICE_EVENTS, ServiceEvent.class);
    List<OutputCheck> checks = rows(Layout.Single.OUTPUT_CHECKS, OutputCheck.class);
    rows(Layout.Single.APPROVALS, LedgerLine.class);
    mentions.check(values.references());
    mentionsOfPages.check(values.references(), borrowed::has);
    return details.map(each -> unit(each, readings, events, checks));
  }

  /** Something that is no language could be the path of a file. */
  private boolean isLanguage(Fact<String> language) {
    try {
      new Locale.Builder().setLanguageTag(language.value());
      return true;
    } catch (IllformedLocaleException e) {
      findings.add(
          ReadingFaults.NO_SENSE
              .at(language.at(), Quote.of(language.value()) + " is no language")
              .help("write its tag in letters and hyphens, such as 'en-GB'"));
      return false;
    }
  }

  private boolean isOfAnotherFormat(SourceNode file) {
    if (!(file instanceof SourceNode.Mapping mapping)) {
      return false;
    }
    Optional<SourceNode.Scalar> other =
        mapping.entries().stream()
            .filter(entry -> entry.key().text().equals("format"))
            .map(SourceNode.Entry::value)
            .filter(SourceNode.Scalar.class::isInstance)
            .map(SourceNode.Scalar.class::cast)
            .filter(format -> format.text().strip().matches("[1-9]\\d{0,3}"))
            .filter(format -> !format.text().strip().equals(FORMAT))
            .findFirst();
    other.ifPresent(
        format ->
            findings.add(
                ReadingFaults.UNKNOWN_FORMAT
                    .at(
                        format.at(),
                        "this content is of format "
                            + format.text().strip()
                            + ", and this program reads format "
                            + FORMAT)
                    .help("use the version of the program that this content was written for")));
    return other.isPresent();
  }

  private void readThings() {
    list(Layout.Single.FOOT_SWITCHES, FootSwitch.class);
    list(Layout.Single.INSTRUMENTS, Instrument.class);
    list(Layout.Single.CABLES, Cable.class);
    list(Layout.Single.ELECTRODES, Electrode.class);
    whole(Layout.Single.SITES, SitesFile.class);
    whole(Layout.Single.LESIONS, LesionsFile.class);
    list(Layout.Single.SOURCES, Citation.class);
    each(Layout.Folder.MACHINES, Machine.class);
    rows(Layout.Single.ASSETS, Asset.class);
    folder.in(Layout.Folder.PROFILES).forEach(this::profiles);
    each(Layout.Folder.ROOMS, Room.class);
    each(Layout.Folder.CHECKLISTS, Checklist.class);
    each(Layout.Folder.DRILLS, Drill.class);
    each(Layout.Folder.PATHS, LearningPath.class);
    handbook();
  }

  private Optional<SourceNode> yaml(String name) {
    Optional<TextFile> file = folder.file(name);
    file.ifPresent(prose::open);
    Optional<SourceNode> piece = file.flatMap(text -> YamlReader.read(text, findings));
    if (piece.isEmpty() && folder.has(name)) {
      Layout.single(name).ifPresent(this::markIncomplete);
    }
    return piece;
  }

  private void markIncomplete(Layout.Single file) {
    file.kinds().forEach(scope::markIncomplete);
  }

  private <T> Optional<T> record(Class<T> type, SourceNode piece) {
    return values.bind(type, piece, BindingContext.WHOLE_FILE).map(type::cast);
  }

  private <T> Optional<T> item(Class<T> type, SourceNode piece) {
    return values.bind(type, piece, BindingContext.WHOLE_FILE.item()).map(type::cast);
  }

  private void whole(Layout.Single file, Class<?> type) {
    Optional<SourceNode> piece = yaml(file.file());
    if (piece.isPresent() && record(type, piece.orElseThrow()).isEmpty()) {
      markIncomplete(file);
    }
  }

  private void list(Layout.Single file, Class<? extends Thing> type) {
    Optional<SourceNode> piece = yaml(file.file());
    if (piece.isEmpty()) {
      return;
    }
    if (piece.orElseThrow() instanceof SourceNode.Sequence items) {
      items.items().forEach(each -> item(type, each));
    } else {
      markIncomplete(file);
      values.refuseShape(piece.orElseThrow(), BindingContext.WHOLE_FILE, Shape.LIST);
    }
  }

  private void each(Layout.Folder wanted, Class<? extends Thing> type) {
    for (String name : folder.in(wanted)) {
      int mark = findings.mark();
      Optional<SourceNode> piece = yaml(name);
      piece.ifPresent(file -> record(type, file));
      new NamedFile(name, wanted.kind(), piece).compare(scope, findings, mark);
    }
  }

  private void profiles(String name) {
    int mark = findings.mark();
    Optional<ProfilesFile> file = yaml(name).flatMap(piece -> record(ProfilesFile.class, piece));
    if (file.isEmpty()) {
      scope.markIncomplete(Kind.PROFILE);
      standIn(name, findings.errorsSince(mark));
      return;
    }
    SourceNode machine = file.orElseThrow().machine();
    SourceNode.Scalar key =
        new SourceNode.Scalar(machine.at(), "machine", SourceNode.Style.PLAIN, machine.at().line());
    for (SourceNode profile : file.orElseThrow().profiles()) {
      item(Profile.class, withMachine(profile, new SourceNode.Entry(key, machine)));
    }
  }

  /**
   * One broken thing for all profiles of a file that cannot be used, so that nobody says they are
   * missing.
   */
  private void standIn(String name, List<Problem> problems) {
    String slug = name.replaceFirst(".*/", "").replaceFirst("\\.yaml$", "");
    if (ThingId.isId(Kind.PROFILE, slug) && scope.find(new ThingId(Kind.PROFILE, slug)).isEmpty()) {
      scope.putBroken(new ThingId(Kind.PROFILE, slug), Location.startOf(name), problems);
    }
  }

  private static SourceNode withMachine(SourceNode profile, SourceNode.Entry machine) {
    if (!(profile instanceof SourceNode.Mapping mapping)) {
      return profile;
    }
    List<SourceNode.Entry> entries = new ArrayList<>();
    entries.add(machine);
    entries.addAll(mapping.entries());
    return new SourceNode.Mapping(mapping.at(), entries);
  }

  private void handbook() {
    HandbookReader reader = new HandbookReader(findings, scope, mentionsOfPages, borrowed);
    for (String name : folder.in(Layout.Folder.HANDBOOK)) {
      int mark = findings.mark();
      Optional<ThingId> id = NamedFile.id(name, Kind.HANDBOOK, findings);
      Optional<TextFile> file = folder.file(name);
      if (id.isPresent() && file.isPresent()) {
        reader.read(file.orElseThrow(), id.orElseThrow());
      } else if (id.isPresent()) {
        scope.putBroken(id.orElseThrow(), Location.startOf(name), findings.errorsSince(mark));
      }
    }
    List<String> order = Chapters.names();
    folder.in(Layout.Folder.CHAPTERS).stream()
        .sorted(Comparator.comparing(name -> order.indexOf(TextFile.of(name, "").stem())))
        .forEach(name -> chapter(name, reader));
  }

  /** A chapter of the program that the unit takes over: the file holds the unit's remarks on it. */
  private void chapter(String name, HandbookReader reader) {
    int mark = findings.mark();
    Location at = Location.startOf(name);
    Optional<ThingId> id = NamedFile.id(name, Kind.HANDBOOK, findings);
    if (id.isEmpty()) {
      return;
    }
    Optional<Thing> earlier = scope.find(id.orElseThrow());
    if (earlier.isPresent()) {
      findings.add(
          ReadingFaults.WRITTEN_TWICE
              .at(at, "the handbook has a page of its own in place of this chapter")
              .note(earlier.orElseThrow().at(), "the page")
              .help("remove one of the two files"));
      return;
    }
    Optional<TextFile> chapter = Chapters.file(id.orElseThrow().slug());
    Optional<TextFile> remarks = folder.file(name);
    if (chapter.isEmpty()) {
      String slug = id.orElseThrow().slug();
      findings.add(
          ReadingFaults.UNKNOWN_REFERENCE
              .at(at, "the program has no chapter " + Quote.of(slug))
              .help(
                  NearNames.questionOr(
                      "a page of your own belongs in the folder 'handbook'",
                      slug,
                      Chapters.names())));
    }
    if (chapter.isPresent() && remarks.isPresent()) {
      folder.alsoRead(chapter.orElseThrow());
      reader.chapter(chapter.orElseThrow(), remarks.orElseThrow(), id.orElseThrow());
    } else {
      scope.putBroken(id.orElseThrow(), at, findings.errorsSince(mark));
    }
  }

  private <T> List<T> rows(Layout.Single file, Class<T> type) {
    Optional<TextFile> text = folder.file(file.file());
    Optional<List<SourceNode>> rows =
        text.flatMap(each -> CsvTable.read(each, values.records().form(type), findings));
    if (rows.isEmpty() && folder.has(file.file())) {
      markIncomplete(file);
    }
    List<T> whole = new ArrayList<>();
    Set<List<String>> halfRead = new HashSet<>();
    for (SourceNode row : rows.orElse(List.of())) {
      if (LoggedRecord.class.isAssignableFrom(type) && row instanceof SourceNode.Mapping written) {
        records.add(asWritten(written));
      }
      if (row.refusal().isPresent()) {
        markIncomplete(file);
      }
      int mark = findings.mark();
      SourceNode readable =
          file == Layout.Single.PROGRAM_READINGS ? PedalRow.readable(row, findings) : row;
      Optional<T> bound = item(type, readable);
      if (findings.errorsSince(mark).isEmpty()) {
        bound.ifPresent(whole::add);
      } else {
        halfRead.add(slot(text.orElseThrow(), row));
      }
    }
    whole.removeIf(each -> each instanceof ProgramReading read && halfRead.contains(slot(read)));
    return whole;
  }

  /**
   * Asset, day and slot of a row. If one pedal cannot be read, the slot counts as not read back.
   */
  private static List<String> slot(TextFile file, SourceNode row) {
    List<String> header = cells(file, 1);
    List<String> cells = cells(file, row.at().line());
    return Stream.of("asset", "date", "slot")
        .map(header::indexOf)
        .map(column -> column >= 0 && column < cells.size() ? cells.get(column) : "")
        .toList();
  }

  private static List<String> cells(TextFile file, int line) {
    return Arrays.stream(file.source().line(line).split(",", -1)).map(String::strip).toList();
  }

  private static List<String> slot(ProgramReading read) {
    return List.of(
        read.asset().value().id().slug(),
        read.date().value().toString(),
        read.slot().value().toString());
  }

  private static SheetRow asWritten(SourceNode.Mapping row) {
    return new SheetRow(
        row.at(),
        row.entries().stream()
            .map(
                entry ->
                    new SheetRow.Cell(
                        entry.key().text(), entry.value().words(), entry.value().at()))
            .filter(cell -> !cell.text().isEmpty())
            .toList());
  }

  /** The rows of the sheets of records as written, whether they could be read or not. */
  List<SheetRow> records() {
    return List.copyOf(records);
  }

  private static <T extends LoggedRecord> List<T> counting(List<T> records) {
    return records.stream().filter(each -> each.withdrawn().isEmpty()).toList();
  }

  private static List<LoggedRecord> withdrawn(
      List<ProgramReading> readings, List<ServiceEvent> events, List<OutputCheck> checks) {
    List<LoggedRecord> all = new ArrayList<>(readings);
    all.addAll(events);
    all.addAll(checks);
    return all.stream().filter(each -> each.withdrawn().isPresent()).toList();
  }

  private Unit unit(
      UnitDetails details,
      List<ProgramReading> readings,
      List<ServiceEvent> events,
      List<OutputCheck> checks) {
    OwnWords own = new OwnWords(folder, findings);
    return new Unit(
        details,
        scope.whole(Kind.FOOT_SWITCH, FootSwitch.class),
        scope.whole(Kind.INSTRUMENT, Instrument.class),
        scope.whole(Kind.CABLE, Cable.class),
        scope.whole(Kind.ELECTRODE, Electrode.class),
        scope.whole(Kind.SITE, Site.class),
        scope.whole(Kind.SITE_GROUP, SiteGroup.class),
        scope.whole(Kind.STEP, Step.class),
        scope.whole(Kind.LESION, Lesion.class),
        scope.whole(Kind.MACHINE, Machine.class),
        scope.whole(Kind.CITATION, Citation.class),
        scope.whole(Kind.PROFILE, Profile.class),
        scope.whole(Kind.ASSET, Asset.class),
        counting(readings),
        counting(events),
        counting(checks),
        withdrawn(readings, events, checks),
        scope.whole(Kind.ROOM, Room.class),
        scope.whole(Kind.CHECKLIST, Checklist.class),
        scope.whole(Kind.DRILL, Drill.class),
        scope.whole(Kind.PATH, LearningPath.class),
        scope.whole(Kind.HANDBOOK, HandbookPage.class),
        own.templates(),
        own.words(details.language().value()),
        scope.broken());
  }
}
