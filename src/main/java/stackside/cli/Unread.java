package stackside.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.signed.LedgerFaults;
import stackside.model.Kind;
import stackside.model.Profile;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.source.Location;
import stackside.source.Note;
import stackside.source.Problem;
import stackside.source.Severity;
import stackside.source.SheetRow;
import stackside.source.Sources;

/**
 * What could not be read of a unit, and what cannot be judged because of it. A signature covers
 * facts from several files, and what is known of a generator stands in sheets: where one of these
 * could not be read whole, nobody can say that something was changed or is missing.
 */
record Unread(Unit unit, Sources sources, List<SheetRow> records, List<Problem> errors) {
  private static final String UNIT = "unit.yaml";
  private static final String LEDGER = "approvals.csv";
  private static final String SOURCES = "sources.yaml";
  private static final String READINGS = "program-readings.csv";
  private static final String OUTPUTS = "output-checks.csv";
  private static final String EVENTS = "service-events.csv";

  /** What a room consists of, and so which cables serve a profile in it. */
  private static final List<String> UNDER_ROOMS =
      List.of(
          UNIT,
          "assets.csv",
          "instruments.yaml",
          "cables.yaml",
          "electrodes.yaml",
          "foot-switches.yaml",
          "sites.yaml",
          "lesions.yaml",
          "rooms/",
          "machines/");

  static Unread in(Unit unit, CheckedContent judged) {
    return new Unread(
        unit,
        judged.sources(),
        judged.records(),
        judged.problems().stream()
            .filter(problem -> ErrorScope.isUnread(problem) || isAltered(problem))
            .filter(problem -> problem.severity() == Severity.ERROR)
            .toList());
  }

  private static boolean isAltered(Problem problem) {
    return problem.fault().equals(LedgerFaults.ALTERED);
  }

  /** Whether a matter may be there only because something could not be read. */
  boolean mayExplain(OpenItem matter) {
    return !causes(matter).isEmpty();
  }

  /** What cannot be judged, in sentences: each cause once, with a count. */
  List<String> words(List<OpenItem> matters) {
    Map<String, Set<ThingId>> about = new LinkedHashMap<>();
    for (OpenItem matter : matters) {
      Set<String> causes = causes(matter);
      if (!causes.isEmpty()) {
        about
            .computeIfAbsent(sentence(matter.basis(), causes), any -> new TreeSet<>())
            .add(matter.about());
      }
    }
    return about.entrySet().stream()
        .map(each -> each.getKey().formatted(counted(each.getValue())))
        .toList();
  }

  private static String sentence(OpenItem.Basis basis, Set<String> causes) {
    String what =
        switch (basis) {
          case SIGNATURES -> "signatures under %s";
          case READINGS -> "programs stored in %s";
          case OUTPUT_CHECKS -> "output of %s";
        };
    String mended =
        causes.equals(Set.of(LEDGER))
            ? LEDGER + " is as it was signed"
            : String.join(" and ", causes) + " can be read whole";
    return "not judged until " + mended + ": " + what;
  }

  private String counted(Set<ThingId> things) {
    return things.stream()
        .collect(Collectors.groupingBy(this::noun, LinkedHashMap::new, Collectors.counting()))
        .entrySet()
        .stream()
        .map(each -> counted(each.getKey(), each.getValue()))
        .collect(Collectors.joining(" and "));
  }

  private static String counted(String noun, long count) {
    return noun.startsWith("the ") ? noun : count + " " + noun + (count == 1 ? "" : "s");
  }

  private String noun(ThingId thing) {
    return switch (thing.kind()) {
      case ASSET -> "generator";
      case UNIT ->
          thing.equals(unit.sources().id()) ? "the list of sources" : "the unit's policies";
      default -> thing.kind().spoken();
    };
  }

  private Set<String> causes(OpenItem matter) {
    ThingId thing = matter.about();
    return switch (matter.basis()) {
      case SIGNATURES -> signed(thing);
      case READINGS -> sheets(thing, READINGS, EVENTS);
      case OUTPUT_CHECKS -> sheets(thing, OUTPUTS, EVENTS);
    };
  }

  private Set<String> signed(ThingId thing) {
    Set<String> causes = files(LEDGER);
    if (thing.kind() == Kind.UNIT) {
      causes.addAll(thing.equals(unit.sources().id()) ? files(SOURCES) : files(UNIT));
    } else if (thing.kind() == Kind.ROLE || thing.kind() == Kind.ROOM) {
      causes.addAll(files(UNIT));
    } else if (thing.kind() == Kind.PROFILE && restsOnRooms(thing)) {
      UNDER_ROOMS.forEach(each -> causes.addAll(files(each)));
      if (causes.isEmpty()) {
        causes.addAll(files(""));
      }
    }
    return causes;
  }

  /** The cables of an answer are those that the rooms keep. */
  private boolean restsOnRooms(ThingId thing) {
    return unit.anyBroken(Kind.ROOM)
        && unit.find(thing)
            .filter(Profile.class::isInstance)
            .flatMap(profile -> ((Profile) profile).settings())
            .isPresent();
  }

  private Set<String> files(String beginning) {
    return errors.stream()
        .map(error -> error.at().file())
        .filter(file -> file.startsWith(beginning))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private Set<String> sheets(ThingId asset, String... sheets) {
    Set<String> causes =
        Stream.of(sheets)
            .filter(sheet -> !isAbout(sheet, asset) && hasRowsOfNobody(sheet))
            .collect(Collectors.toCollection(TreeSet::new));
    errors.stream()
        .flatMap(Unread::places)
        .filter(at -> List.of(sheets).contains(at.file()))
        .filter(at -> isWhollyUnread(at.file()) || mayBeAbout(asset, at))
        .map(Location::file)
        .forEach(causes::add);
    return causes;
  }

  private boolean isAbout(String sheet, ThingId asset) {
    return generators(sheet).anyMatch(asset.slug()::equals);
  }

  /** Rows about a number that is not in the list of assets may be about any of them. */
  private boolean hasRowsOfNobody(String sheet) {
    return generators(sheet)
        .anyMatch(number -> unit.assets().stream().noneMatch(a -> a.id().slug().equals(number)));
  }

  private Stream<String> generators(String sheet) {
    return records.stream()
        .filter(row -> row.at().file().equals(sheet))
        .flatMap(row -> row.cell("asset").stream())
        .map(SheetRow.Cell::text);
  }

  private boolean isWhollyUnread(String sheet) {
    return records.stream().noneMatch(row -> row.at().file().equals(sheet));
  }

  private static Stream<Location> places(Problem problem) {
    return Stream.concat(Stream.of(problem.at()), problem.notes().stream().map(Note::at));
  }

  /** A row that begins with the number of another generator is about that generator. */
  private boolean mayBeAbout(ThingId asset, Location at) {
    String number = sources.excerpt(at).map(row -> row.replaceFirst(",.*", "")).orElse("");
    return asset.slug().equals(number)
        || unit.assets().stream().noneMatch(each -> each.id().slug().equals(number));
  }
}
