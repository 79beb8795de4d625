package stackside.content;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.model.Kind;

/** Which files a content folder may hold, and which kinds of things each of them describes. */
public final class Layout {
  static final String UNIT = "unit.yaml";

  private Layout() {}

  /** A file that stands at the top of the folder. */
  public enum Single {
    UNIT_DETAILS(UNIT, Kind.LOCATION, Kind.CONTACT, Kind.ROLE, Kind.PATIENT_GROUP, Kind.UNIT),
    FOOT_SWITCHES("foot-switches.yaml", Kind.FOOT_SWITCH),
    INSTRUMENTS("instruments.yaml", Kind.INSTRUMENT),
    CABLES("cables.yaml", Kind.CABLE),
    ELECTRODES("electrodes.yaml", Kind.ELECTRODE),
    SITES("sites.yaml", Kind.SITE, Kind.SITE_GROUP),
    LESIONS("lesions.yaml", Kind.STEP, Kind.LESION),
    SOURCES("sources.yaml", Kind.CITATION),
    ASSETS("assets.csv", Kind.ASSET),
    PROGRAM_READINGS("program-readings.csv"),
    SERVICE_EVENTS("service-events.csv"),
    OUTPUT_CHECKS("output-checks.csv"),
    APPROVALS("approvals.csv");

    private final String file;

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of
    private final List<Kind> kinds;

    Single(String file, Kind... kinds) {
      this.file = file;
      this.kinds = List.of(kinds);
    }

    String file() {
      return file;
    }

    List<Kind> kinds() {
      return kinds;
    }
  }

  /** A folder in which each file of the right ending is read. */
  public enum Folder {
    MACHINES("machines", ".yaml", Kind.MACHINE),
    ROOMS("rooms", ".yaml", Kind.ROOM),
    PROFILES("profiles", ".yaml", Kind.PROFILE),
    CHECKLISTS("checklists", ".yaml", Kind.CHECKLIST),
    DRILLS("drills", ".yaml", Kind.DRILL),
    PATHS("paths", ".yaml", Kind.PATH),
    HANDBOOK("handbook", ".md", Kind.HANDBOOK),
    CHAPTERS("chapters", ".md", Kind.HANDBOOK);

    private final String folder;
    private final String ending;
    private final Kind kind;

    Folder(String folder, String ending, Kind kind) {
      this.folder = folder;
      this.ending = ending;
      this.kind = kind;
    }

    String folder() {
      return folder;
    }

    String ending() {
      return ending;
    }

    Kind kind() {
      return kind;
    }
  }

  /** The folder of signed facts. Only {@code approve} writes it, and reading leaves it alone. */
  static final String APPROVED = "approved";

  /** The folder with the unit's own look and words, in place of the program's. */
  public static final String TEMPLATES = "templates";

  static final List<String> TEMPLATE_FOLDERS = List.of("assets", "words");

  /** Whether a file of this path below the templates replaces one of the program's. */
  static boolean isTemplate(String name) {
    return isWords(name)
        || (name.matches("(assets/)?[a-z-]+\\.[a-z]+")
            && Layout.class.getResource("/" + TEMPLATES + "/" + name) != null);
  }

  /** Whether a file of this path below the templates holds words, in whatever language. */
  static boolean isWords(String name) {
    return name.matches("words/[A-Za-z0-9-]+\\.txt");
  }

  /** Whether a file may be empty: a unit can take over a chapter without adding remarks. */
  static boolean mayBeEmpty(String name) {
    return name.startsWith(Folder.CHAPTERS.folder() + "/");
  }

  /** Names at the top of the folder that may be there but are not read. */
  static boolean leftAlone(String name) {
    return name.startsWith(".") || List.of(APPROVED, TEMPLATES, "README.md").contains(name);
  }

  /** The file of this name at the top of the folder. */
  public static Optional<Single> single(String name) {
    return Arrays.stream(Single.values()).filter(each -> each.file().equals(name)).findFirst();
  }

  /** The folder of this name. */
  public static Optional<Folder> folder(String name) {
    return Arrays.stream(Folder.values()).filter(each -> each.folder().equals(name)).findFirst();
  }

  /** Every name that the program knows at the top of the folder. */
  static List<String> knownNames() {
    List<String> singles = Arrays.stream(Single.values()).map(Single::file).toList();
    List<String> folders = Arrays.stream(Folder.values()).map(Folder::folder).toList();
    return Stream.of(singles, folders, List.of(TEMPLATES)).flatMap(List::stream).toList();
  }

  /** Where things of a kind are described, for a message. */
  static String home(Kind kind) {
    if (kind == Kind.SOCKET || kind == Kind.MODE) {
      return "the machine's file in 'machines'";
    }
    Optional<Folder> folder =
        Arrays.stream(Folder.values()).filter(each -> each.kind() == kind).findFirst();
    return folder
        .map(each -> "the folder '" + each.folder() + "'")
        .or(
            () ->
                Arrays.stream(Single.values())
                    .filter(each -> each.kinds().contains(kind))
                    .findFirst()
                    .map(each -> "'" + each.file() + "'"))
        .orElseThrow();
  }
}
