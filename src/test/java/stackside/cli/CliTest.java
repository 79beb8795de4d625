package stackside.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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
        new Surroundings(
            folder,
            () -> LocalDate.of(2026, 3, 1),
            new LocalDisk(),
            Surroundings.Audience.PIPE,
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
    assertThat(draftWithTemplates()).isLessThan(2);
    assertThat(folder.resolve("site/assets/stackside.css")).hasContent("body { color: black }");
    assertThat(folder.resolve("site/search.html")).content().contains("Ours");
    assertThat(folder.resolve("site/index.html"))
        .content()
        .contains(">Theatres<", ">Find an answer<");
  }

  @Test
  void aTemplateThatReplacesNothing_isWrongUsage() throws IOException {
    template("serach.ftlh", "Ours");
    assertThat(draftWithTemplates()).isEqualTo(2);
    assertThat(err()).contains("'serach.ftlh' under 'ours' replaces no template of the program");
  }

  @Test
  void aTemplateThatIsNoText_isWrongUsage() throws IOException {
    template("page.ftlh", "");
    Files.write(folder.resolve("ours/page.ftlh"), new byte[] {(byte) 0xff, (byte) 0xfe, 'a'});
    assertThat(draftWithTemplates()).isEqualTo(2);
    assertThat(err()).contains("the template 'page.ftlh' is not in UTF-8").doesNotContain("\tat ");
  }

  @Test
  void aTemplateOfGigabytes_isWrongUsage() throws IOException {
    template("page.ftlh", "");
    try (RandomAccessFile large =
        new RandomAccessFile(folder.resolve("ours/page.ftlh").toFile(), "rw")) {
      large.setLength(3L << 30);
    }
    assertThat(draftWithTemplates()).isEqualTo(2);
    assertThat(err()).contains("the template 'page.ftlh' is larger than 5 MB");
  }

  @Test
  void aTemplateThatCannotBeFilled_isNamed() throws IOException {
    template("page.ftlh", "${frame.titel}");
    assertThat(draftWithTemplates()).isNotZero();
    assertThat(err()).contains("page.ftlh", "frame.titel").doesNotContain("\tat ");
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
        "check --on|say what stands behind --on",
        "check --on --format json|say what stands behind --on",
        "check --on 2026-03-01 --on 2026-03-02|give --on once",
        "withdraw --reason torn card|give '--role' and '--initials'",
        "withdraw --reason torn --role nurse --initials KM|name the CARD",
        "issue --first=yes|'--first=yes'",
        "check --on 1.3.2026|'1.3.2026' is no date such as 2026-03-01",
        "check --format yaml|'--format'",
        "check nowhere|there is no folder 'nowhere'",
        "check one two|nothing is known to do with 'two'; 'stackside check --help' tells more",
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
      assertThat(err()).contains("there is no folder 'nowhere'");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void explainsAFault() {
    assertThat(run("explain", "not-a-quantity")).isZero();
    assertThat(out()).startsWith("not-a-quantity (error): a text is no quantity with its unit\n");
  }

  @Test
  void explainAlone_listsAll() {
    assertThat(run("explain")).isZero();
    assertThat(out().lines().count()).isEqualTo(Faults.all().size());
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
  }
}
