package stackside;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static java.util.Comparator.comparingInt;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaConstructorCall;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Holds the arrows between the packages: who may import whom, and who may touch the disk, the clock
 * and the console.
 */
final class ArchitectureTest {

  private static final Path SOURCES = Path.of("src/main/java");

  private static final Pattern IMPORT =
      Pattern.compile(
          "^import (?:static )?(stackside(?:\\.[a-z]\\w*)*)\\.[A-Z*]", Pattern.MULTILINE);

  private static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .withImportOption(location -> !location.contains("/test-classes/"))
          .importPackages("stackside");

  /** The table: a package and those it names. Packages below it without a row are part of it. */
  enum Stage {
    SOURCE("source"),
    QUANTITY("quantity"),
    ENERGY("energy", QUANTITY),
    MODEL("model", SOURCE, QUANTITY),
    CONTENT("content", MODEL),
    DERIVE("derive", MODEL, ENERGY),
    CHECK("check", MODEL, DERIVE),
    RENDER("render", DERIVE),
    SITE("render.site", RENDER, CHECK),
    CARD("render.card", RENDER, CHECK),
    INSPECT("inspect", RENDER, CHECK),
    PUBLISH("publish", RENDER),
    CLI("cli", CONTENT, SITE, CARD, INSPECT, PUBLISH);

    private final String root;

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of
    private final List<Stage> imports;

    Stage(String root, Stage... imports) {
      this.root = "stackside." + root;
      this.imports = List.of(imports);
    }

    static Stage of(String packageName) {
      return Stream.of(values())
          .filter(s -> packageName.equals(s.root) || packageName.startsWith(s.root + "."))
          .max(comparingInt(s -> s.root.length()))
          .orElseThrow(() -> new AssertionError(packageName + " has no row in the table"));
    }

    /** Itself and all it reaches, for a package may import what its imports may import. */
    Set<Stage> allowed() {
      EnumSet<Stage> allowed = EnumSet.of(this);
      imports.forEach(stage -> allowed.addAll(stage.allowed()));
      return allowed;
    }

    boolean touchesTheDisk() {
      return this == CONTENT || this == PUBLISH || this == CLI;
    }

    boolean knowsTheDay() {
      return this == PUBLISH || this == CLI;
    }
  }

  @Test
  void everyPackageHasARowAndNobodyStandsInTheRoot() {
    assertThat(PROGRAM)
        .filteredOn(type -> !type.getName().equals("stackside.package-info"))
        .isNotEmpty()
        .allSatisfy(type -> assertThat(Stage.of(type.getPackageName())).isNotNull());
  }

  @Test
  void everyPackageIsNullMarked() {
    assertThat(PROGRAM.stream().map(JavaClass::getPackage).distinct())
        .isNotEmpty()
        .allSatisfy(p -> assertThat(p.isAnnotatedWith(NullMarked.class)).as(p.getName()).isTrue());
  }

  @Test
  void noPackageIsADrawerForOddsAndEnds() {
    noClasses()
        .should()
        .resideInAnyPackage("..util..", "..utils..", "..helper..", "..common..", "..core..")
        .check(PROGRAM);
  }

  @ParameterizedTest
  @EnumSource
  void classesFollowTheArrows(Stage stage) {
    Set<Stage> allowed = stage.allowed();
    classes()
        .that(are("part of " + stage, type -> isOurs(type) && Stage.of(packageOf(type)) == stage))
        .should()
        .onlyDependOnClassesThat(
            are(
                "part of " + allowed + " or foreign",
                type -> !isOurs(type) || allowed.contains(Stage.of(packageOf(type)))))
        .check(PROGRAM);
  }

  /** Constants are copied by the compiler and Javadoc is dropped, so the sources are read too. */
  @Test
  void importLinesFollowTheArrows() throws IOException {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      List<Path> inPackages =
          files
              .filter(file -> file.toString().endsWith(".java"))
              .filter(file -> !file.getParent().equals(SOURCES.resolve("stackside")))
              .toList();
      assertThat(inPackages).isNotEmpty().allSatisfy(ArchitectureTest::importsOnlyWhatItMay);
    }
  }

  private static void importsOnlyWhatItMay(Path file) throws IOException {
    String packageName =
        SOURCES
            .relativize(file.getParent())
            .toString()
            .replace(file.getFileSystem().getSeparator(), ".");
    Set<Stage> allowed = Stage.of(packageName).allowed();
    assertThat(IMPORT.matcher(Files.readString(file)).results().map(m -> m.group(1)))
        .allSatisfy(imported -> assertThat(allowed).contains(Stage.of(imported)));
  }

  @Test
  void onlyTheEndsOfThePipelineTouchTheDisk() {
    noClasses()
        .that(
            are(
                "between the ends",
                type -> isOurs(type) && !Stage.of(packageOf(type)).touchesTheDisk()))
        .should()
        .dependOnClassesThat()
        .haveNameMatching(
            "java\\.nio\\.file\\.(Files|FileSystems|FileVisitor|WatchService)"
                + "|java\\.nio\\.channels\\..*"
                + "|java\\.io\\.(File|FileInputStream|FileOutputStream|FileReader|FileWriter|RandomAccessFile)")
        .check(PROGRAM);
  }

  @Test
  void contentReadsTheDiskAndNeverWritesToIt() {
    noClasses()
        .that()
        .resideInAPackage("stackside.content..")
        .should()
        .accessTargetWhere(
            calls(
                "writing files",
                Files.class,
                "write|writeString|new(Buffered)Writer|newOutputStream|copy|move|delete.*|create.*|set.*"))
        .orShould()
        .dependOnClassesThat()
        .haveNameMatching("java\\.io\\.(FileOutputStream|FileWriter|RandomAccessFile)")
        .check(PROGRAM);
  }

  @Test
  void onlyTheCommandLineAndPublishKnowTheDay() {
    noClasses()
        .that(
            are(
                "without a clock",
                type -> isOurs(type) && !Stage.of(packageOf(type)).knowsTheDay()))
        .should()
        .accessTargetWhere(describe("asking the time", ArchitectureTest::asksTheTime))
        .orShould()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.time.Clock")
        .check(PROGRAM);
  }

  private static boolean asksTheTime(JavaAccess<?> access) {
    String owner = access.getTargetOwner().getName();
    String name = access.getTarget().getName();
    return (owner.startsWith("java.time.") && name.equals("now"))
        || (owner.equals("java.lang.System") && name.matches("currentTimeMillis|nanoTime"))
        || (owner.equals("java.util.Calendar") && name.equals("getInstance"))
        || (owner.matches("java\\.util\\.(Date|GregorianCalendar)")
            && access instanceof JavaConstructorCall call
            && call.getTarget().getRawParameterTypes().isEmpty());
  }

  @Test
  void nothingDependsOnWhereOrOnWhichMachineItRuns() {
    noClasses()
        .that()
        .resideOutsideOfPackages("stackside.cli..", "stackside.publish..")
        .should()
        .accessTargetWhere(
            describe(
                "asking for the default locale, time zone or environment, or for chance",
                access ->
                    (access.getTargetOwner().getName() + "." + access.getTarget().getName())
                        .matches(
                            "java\\.util\\.(Locale|TimeZone)\\.getDefault"
                                + "|java\\.time\\.ZoneId\\.systemDefault"
                                + "|java\\.nio\\.charset\\.Charset\\.defaultCharset"
                                + "|java\\.lang\\.System\\.(getenv|getProperty|lineSeparator)"
                                + "|java\\.lang\\.Math\\.random"
                                + "|java\\.util\\.UUID\\.randomUUID")))
        .check(PROGRAM);
  }

  @Test
  void onlyTheCommandLineAndPublishPrintOrLog() {
    noClasses()
        .that()
        .resideOutsideOfPackages("stackside.cli..", "stackside.publish..")
        .should()
        .dependOnClassesThat()
        .haveNameMatching(
            "java\\.util\\.logging\\..*|java\\.lang\\.System\\$Logger.*|java\\.io\\.Console"
                + "|org\\.slf4j\\..*|org\\.apache\\.commons\\.logging\\..*")
        .orShould()
        .accessTargetWhere(calls("using the console", System.class, "out|err|in|console|getLogger"))
        .orShould()
        .accessTargetWhere(
            describe(
                "printing a stack trace",
                access -> access.getTarget().getName().equals("printStackTrace")))
        .check(PROGRAM);
  }

  @Test
  void onlyTheCommandLineEndsTheProgram() {
    noClasses()
        .that()
        .resideOutsideOfPackage("stackside.cli..")
        .should()
        .accessTargetWhere(calls("ending the program", System.class, "exit"))
        .orShould()
        .accessTargetWhere(calls("ending the program", Runtime.class, "exit|halt"))
        .check(PROGRAM);
  }

  @Test
  void noStaticFieldChanges() {
    fields().that().areStatic().should().beFinal().allowEmptyShould(true).check(PROGRAM);
  }

  private static DescribedPredicate<JavaAccess<?>> calls(
      String description, Class<?> owner, String names) {
    return describe(
        description,
        access ->
            access.getTargetOwner().isEquivalentTo(owner)
                && access.getTarget().getName().matches(names));
  }

  private static DescribedPredicate<JavaClass> are(String description, Predicate<JavaClass> test) {
    return describe(description, test);
  }

  private static boolean isOurs(JavaClass type) {
    return packageOf(type).startsWith("stackside.");
  }

  /** An array stands where its elements do. */
  private static String packageOf(JavaClass type) {
    return type.getBaseComponentType().getPackageName();
  }
}
