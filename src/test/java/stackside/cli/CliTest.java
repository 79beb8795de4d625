package stackside.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stackside.derive.signed.Json;
import stackside.derive.signed.JsonReader;
import stackside.publish.LocalDisk;

/** The command line from the outside: arguments in; streams and an exit code out. */
final class CliTest {

  @TempDir Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... arguments) {
    return cli(out).run(arguments);
  }

  private Cli cli(OutputStream results) {
    return new Cli(
        results,
        err,
        new Environment(
            folder,
            () -> LocalDate.of(2026, 3, 1),
            new LocalDisk(),
            Environment.Audience.PIPE,
            new ByteArrayInputStream(new byte[0])));
  }

  private String out() {
    return out.toString(UTF_8);
  }

  private String err() {
    return err.toString(UTF_8);
  }

  @Test
  void help_isAResult() {
    assertThat(run("--help")).isZero();
    assertThat(out())
        .startsWith("Usage: stackside")
        .contains("  check ")
        .contains("Exit codes: 0 ");
    assertThat(err()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "check, --site FOLDER",
    "draft, --templates FOLDER",
    "approve, --only THING",
    "issue, --first",
    "withdraw, --reason WORDS",
    "explain, RULE",
    "start, FOLDER"
  })
  void helpOfACommand_saysWhatItTakes(String command, String taken) {
    assertThat(run(command, "--on", "--help")).isZero();
    assertThat(out())
        .startsWith("Usage: stackside " + command + " ")
        .contains("  " + taken + " ")
        .contains("  -h, --help ")
        .contains("Exit codes: 0 ");
    assertThat(out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
    assertThat(err()).isEmpty();
  }

  private void template(String name, String text) throws IOException {
    Path file = folder.resolve("ours").resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private int draftWithTemplates() {
    String content = Path.of("src/test/resources/units/base").toAbsolutePath().toString();
    return run("draft", content, "--out", "site", "--templates", "ours");
  }

  @Test
  void templatesOfTheUnitsOwn_replaceThoseOfTheSameName() throws IOException {
    template("assets/stackside.css", "body { color: black }");
    template(
        "search.ftlh",
        "<#import \"layout.ftlh\" as layout><@layout.page frame=frame kind=\"search\">Ours</@>");
    template("words/en-GB.txt", "menu.rooms = Theatres");
    template(".desktop", "left behind");
    assertThat(draftWithTemplates()).isIn(0, 1, 4);
    assertThat(folder.resolve("site/assets/stackside.css")).hasContent("body { color: black }");
    assertThat(folder.resolve("site/search.html")).content().contains("Ours");
    assertThat(folder.resolve("site/index.html"))
        .content()
        .contains(">Theatres<", ">Find an answer<");
  }

  private int checked() {
    return run("check", "content");
  }

  private void ownTemplates() throws IOException {
    Office.copy(Path.of("src/test/resources/units/base"), folder.resolve("content"));
    Files.createSymbolicLink(folder.resolve("content/templates"), Path.of("../ours"));
  }

  @Test
  void everyCommandFindsTheTemplatesOfTheContent() throws IOException {
    Office.copy(Path.of("src/test/resources/units/base"), folder.resolve("content"));
    template("serach.ftlh", "Ours");
    Files.move(folder.resolve("ours"), folder.resolve("content/templates"));
    assertThat(checked()).isEqualTo(1);
    assertThat(err())
        .contains(
            "templates/serach.ftlh:1:1: error: 'templates/serach.ftlh' replaces no file of the"
                + " program [unknown-template]");
  }

  @Test
  void aLinkedFolderOfTemplates_isRefused() throws IOException {
    template("page.ftlh", "Ours");
    ownTemplates();
    assertThat(checked()).isEqualTo(1);
    assertThat(err()).contains("templates:1:1: error: this is a link to a place outside");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/etc/passwd", "../../unit.yaml", "../../../elsewhere"})
  void aLinkedTemplate_isRefused(String to) throws IOException {
    Office.copy(Path.of("src/test/resources/units/base"), folder.resolve("content"));
    Path templates = Files.createDirectories(folder.resolve("content/templates/assets"));
    Files.writeString(folder.resolve("elsewhere"), "secret");
    Files.createSymbolicLink(templates.resolve("stackside.css"), Path.of(to));
    assertThat(checked()).isEqualTo(1);
    assertThat(err())
        .contains("templates/assets/stackside.css:1:1: error: this is a link to a place outside");
  }

  @Test
  void aTemplateThatIsNoText_isAnErrorInTheContent() throws IOException {
    template("page.ftlh", "");
    Files.write(folder.resolve("ours/page.ftlh"), new byte[] {(byte) 0xff, (byte) 0xfe, 'a'});
    assertThat(draftWithTemplates()).isEqualTo(1);
    assertThat(err()).contains("templates/page.ftlh:1:1: error: the file is saved as UTF-16");
  }

  @Test
  void aTemplateOfGigabytes_isAnErrorInTheContent() throws IOException {
    template("page.ftlh", "");
    try (RandomAccessFile large =
        new RandomAccessFile(folder.resolve("ours/page.ftlh").toFile(), "rw")) {
      large.setLength(3L << 30);
    }
    assertThat(draftWithTemplates()).isEqualTo(1);
    assertThat(err()).contains("templates/page.ftlh:1:1: error: the file is larger than 5 MB");
  }

  @Test
  void aTemplateThatCannotBeFilled_isNamed() throws IOException {
    template("page.ftlh", "${frame.titel}");
    assertThat(draftWithTemplates()).isEqualTo(2);
    assertThat(err())
        .contains("stackside: templates/page.ftlh:1: ", "frame.titel")
        .doesNotContain("\tat ", "failed, not your content");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "|say which command to run",
        "chek|there is no command 'chek'; did you mean 'check'?",
        "hello|'stackside --help' lists them",
        "check --onn x|there is no option '--onn'; did you mean '--on'?",
        "check --o x|there is no option '--o'",
        "check -help|there is no option '-help'; did you mean '--help'?",
        "check --first|there is no option '--first'; 'stackside check --help' tells more",
        "check --on|--on needs a value",
        "check --on 2026-03-01 --on 2026-03-02|give --on once",
        "withdraw --reason torn card|give '--role' and '--initials'",
        "withdraw --reason torn --role nurse --initials KM|name the CARD",
        "issue --first=yes|'--first=yes'",
        "check --on 1.3.2026|'1.3.2026' is not a date such as 2026-03-01",
        "check --format yaml|'--format'",
        "check nowhere|there is no folder 'nowhere'",
        "check one two|unexpected argument 'two'; 'stackside check --help' tells more",
        "explain no-such-rule|there is no rule 'no-such-rule'"
      })
  void wrongUsage_isOneSentenceAndTwo(String line, String words) {
    assertThat(run(line == null ? new String[0] : line.split(" "))).isEqualTo(2);
    assertThat(err()).startsWith("stackside: ").contains(words).doesNotContain("\tat ");
    assertThat(out()).isEmpty();
  }

  @Test
  void wrongUsage_isTheSameInTurkish() {
    Locale before = Locale.getDefault();
    Locale.setDefault(new Locale("tr", "TR"));
    try {
      assertThat(run("check", "--format", "JSON", "nowhere")).isEqualTo(2);
      assertThat(out()).contains("there is no folder 'nowhere'");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void explainsAFault() {
    assertThat(run("explain", "not-a-quantity")).isZero();
    assertThat(out())
        .startsWith("not-a-quantity (error): a text is not a quantity with its unit\n");
  }

  @Test
  void explainAlone_listsAll() {
    assertThat(run("explain")).isZero();
    assertThat(out().lines().count()).isEqualTo(Faults.all().size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "check --on --format json|--on needs a value",
        "check nowhere --format json|there is no folder 'nowhere'",
        "check --format=json --onn x|there is no option '--onn'",
        "check --format JSON --on 1.3.2026|is not a date",
        "chekc --format json|there is no command 'chekc'",
        "explain no-such-rule --format json|there is no option '--format'",
        "draft nowhere --format json|there is no folder 'nowhere'",
        "issue nowhere --format json|there is no folder 'nowhere'"
      })
  void wrongUsageIsJsonWhereJsonWasAskedFor(String line, String words) throws Exception {
    assertThat(run(line.split(" "))).isEqualTo(2);
    assertThat(err()).isEmpty();
    Json.Members json = (Json.Members) JsonReader.read(out());
    assertThat(json.values())
        .containsEntry("format", Json.number(1))
        .containsEntry("command", Json.text(line.replaceFirst(" .*", "")))
        .containsEntry("exit", Json.number(2));
    assertThat(json.text("failure").orElseThrow()).contains(words);
  }

  @Test
  void explainJson_describesIt() {
    assertThat(run("explain", "json")).isZero();
    assertThat(out()).startsWith("# What --format json prints").contains("| `problems.line` |");
  }

  @ParameterizedTest
  @ValueSource(strings = {"../../../../etc/passwd", "en_GB", "english language", "e", "en-GB/x"})
  void aLanguageThatIsNone_isRefusedInWords(String language) throws IOException {
    Office.copy(Path.of("src/test/resources/units/base"), folder.resolve("content"));
    Path unit = folder.resolve("content/unit.yaml");
    Files.writeString(
        unit, Files.readString(unit).replaceFirst("language: .*", "language: " + language));
    assertThat(checked()).isEqualTo(1);
    assertThat(err()).contains("error: '" + language + "' is no language [no-sense]");
  }

  @Test
  void resultsThatNobodyCanRead_areAFailure() {
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int b) throws IOException {
            throw new IOException("No space left on device");
          }
        };
    assertThat(cli(full).run("explain")).isEqualTo(3);
    assertThat(err()).startsWith("stackside: not all of the results could be written");
  }

  /** Java's own streams swallow what the disk says; a full disk looked like success. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "--help",
        "explain",
        "explain json",
        "start new",
        "check content",
        "check content --format json",
        "draft content --out made",
        "check nowhere --format json"
      })
  void aFullDeviceIsAFailure_andSaysSoOnTheOtherStream(String line) throws IOException {
    Office.copy(Path.of("src/test/resources/units/bare"), folder.resolve("content"));
    PrintStream full = new PrintStream(new FileOutputStream("/dev/full"));
    assertThat(cli(full).run(line.split(" "))).isEqualTo(3);
    assertThat(err()).endsWith("then run the command again\n").contains("the results");
  }

  @Test
  void messagesThatNobodyCanRead_areAFailureToo() throws IOException {
    PrintStream full = new PrintStream(new FileOutputStream("/dev/full"));
    Environment here =
        new Environment(
            folder,
            () -> LocalDate.of(2026, 3, 1),
            new LocalDisk(),
            Environment.Audience.PIPE,
            new ByteArrayInputStream(new byte[0]));
    assertThat(new Cli(out, full, here).run("check", "nowhere")).isEqualTo(3);
    assertThat(out()).startsWith("stackside: not all of the messages could be written");
  }

  @Test
  void helpFoldsWhereTheTerminalIsNarrow() {
    assertThat(Help.of(DraftCommand.FORM, 40).lines())
        .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(40));
  }

  @Test
  void lettersThatTheLocaleLacks_areNamedAsSuch() {
    assertThat(run("check", "k\ufffdche")).isEqualTo(2);
    assertThat(err()).contains("Java cannot read here", "LC_ALL");
  }
}
