package stackside.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stackside.derive.edition.Books;
import stackside.derive.edition.CardEntry;
import stackside.derive.edition.LifeModel;
import stackside.derive.edition.Register;
import stackside.derive.signed.Deed;
import stackside.publish.HastyDisk;

/** The life of a card through the real commands, step by step beside the model of it. */
final class LifeThroughCommandsTest {
  private static final int LONG = 7;
  private static final int STEP = 7;
  private static final String CARD = "room-1-eq-1-settings";
  private static final String ASSET = "asset:EQ-1";

  /** Seeds of lives in which much is stopped, and in which much is restored. */
  private static final int FULL_OF_STOPS = 71;

  private static final int FULL_OF_COPIES = 37;

  /** The seed of a life in which a record stops the generator before a card ever hung. */
  private static final int STOPPED_BEFORE_THE_FIRST_CARD = 74;

  private static final List<String> ACTIONS =
      List.of(
          "edit",
          "edit back",
          "one signs",
          "two sign",
          "issue",
          "issue",
          "withdraw",
          "lift",
          "restore",
          "time passes",
          "read back");

  @TempDir private Path temporary;

  @Test
  void aHandfulOfLives() throws Exception {
    for (int seed : new int[] {FULL_OF_STOPS, FULL_OF_COPIES, STOPPED_BEFORE_THE_FIRST_CARD}) {
      new Life(temporary.resolve("life-" + seed)).live(seed);
    }
  }

  @Test
  @Tag("thorough")
  void twoHundredLives() throws Exception {
    for (int seed = 1; seed <= 200; seed++) {
      Path folder = temporary.resolve("life-" + seed);
      new Life(folder).live(seed);
      SmallOffice.delete(folder);
    }
  }

  /** One unit whose people do one thing after the other. */
  private static final class Life {
    private final Path folder;
    private final Path site;
    private final LifeModel model = new LifeModel(true);
    private final List<Path> copies = new ArrayList<>();
    private final Map<String, String> states = new HashMap<>();
    private LocalDate day = LocalDate.of(2026, 3, 2);
    private boolean bad;
    private String cold = "    cold: Cold snare.\n";
    private String told = "";

    /** All is signed, but for one answer that says something else since. */
    Life(Path folder) throws IOException {
      this.folder = folder;
      this.site = folder.resolve("site");
      SmallOffice.readyToSign(folder);
      replace(
          "unit.yaml",
          "profile: [lead-endoscopist]",
          "profile: [lead-endoscopist, medical-physics]");
      replace("unit.yaml", "review-after: {profile: 12 months", "review-after: {profile: 6 months");
      for (String role : List.of("lead-nurse", "lead-endoscopist", "medical-physics")) {
        sign(role);
      }
      say("Cold snare, state A.");
    }

    private void replace(String file, String before, String after) throws IOException {
      Path path = folder.resolve("content").resolve(file);
      String text = Files.readString(path);
      assertThat(text).contains(before);
      Files.writeString(path, text.replace(before, after));
    }

    private void say(String words) throws IOException {
      String now = "    cold: \"" + words + "\"\n";
      replace("profiles/arrowgrass.yaml", cold, now);
      cold = now;
    }

    private void sign(String role) {
      String initials = role.startsWith("medical") ? "AP" : role.endsWith("nurse") ? "KM" : "TO";
      run("approve", "--role", role, "--initials", initials);
    }

    private int run(String... arguments) {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      Environment surroundings =
          new Environment(
              folder,
              () -> day,
              new HastyDisk(),
              Environment.Audience.TERMINAL,
              new ByteArrayInputStream("yes\n".repeat(100).getBytes(UTF_8)));
      int code = new Cli(out, out, surroundings).run(arguments);
      told = out.toString(UTF_8);
      assertThat(code).as(told).isNotEqualTo(ExitCode.FAILED.number());
      return code;
    }

    void live(int seed) throws Exception {
      Random random = new Random(seed);
      List<String> way = new ArrayList<>();
      for (int i = 0; i < LONG; i++) {
        String action = ACTIONS.get(random.nextInt(ACTIONS.size()));
        way.add(action);
        act(action);
        assertThat(seen()).as("seed %d, %s\n%s", seed, way, told).isEqualTo(model.seen());
      }
    }

    private void act(String action) throws Exception {
      switch (action) {
        case "edit" -> {
          say("Cold snare, state B.");
          model.edit('B');
        }
        case "edit back" -> {
          say("Cold snare, state A.");
          model.edit('A');
        }
        case "one signs" -> {
          sign("lead-endoscopist");
          model.sign(0);
        }
        case "two sign" -> {
          sign("lead-endoscopist");
          sign("medical-physics");
          model.sign(0);
          model.sign(1);
        }
        case "issue" -> {
          if (Files.exists(site)) {
            run("issue");
          } else {
            run("issue", "--first");
          }
          model.issue();
        }
        case "withdraw" -> {
          boolean hangs = register().card(CARD).filter(CardEntry::current).isPresent();
          decide("withdraw", hangs ? ASSET : CARD, "lead-nurse", "NN");
          model.withdraw();
        }
        case "lift" -> {
          decide("lift", ASSET, "medical-physics", "AP");
          model.lift();
        }
        case "read back" -> readBack();
        case "restore" -> restore();
        case "time passes" -> {
          day = day.plusDays(STEP);
          model.timePasses(STEP);
        }
        default -> throw new AssertionError(action);
      }
      keepACopy();
    }

    /** Slot 3 is read again on a day of its own: wrong, and the next time right. */
    private void readBack() throws IOException {
      day = day.plusDays(1);
      bad = !bad;
      Path sheet = folder.resolve("content/program-readings.csv");
      Files.writeString(
          sheet,
          Files.readString(sheet)
              + "EQ-1,%s,3,EMR R,mono-1,yellow,pulsed-cut,2,%s,AB\n"
                  .formatted(day, bad ? "55 W" : "60 W")
              + "EQ-1,%s,3,EMR R,mono-1,blue,brisk,1,40 W,AB\n".formatted(day));
      model.timePasses(1);
      model.readBack(true);
    }

    private void decide(String command, String what, String role, String initials) {
      run(command, what, "--reason", "Smoke", "--role", role, "--initials", initials);
    }

    private Register register() throws Exception {
      Path file = site.resolve(Register.FILE);
      return Files.exists(file) ? Register.read(Files.readString(file)) : Register.none();
    }

    /** The site folder after each deed, as a careful person keeps it. */
    private void keepACopy() throws Exception {
      if (register().lines().size() > copies.size()) {
        Path copy = folder.resolve("copy-" + copies.size());
        if (Files.exists(copy)) {
          SmallOffice.delete(copy);
        }
        SmallOffice.link(site, copy);
        copies.add(copy);
      }
    }

    private void restore() throws IOException {
      if (copies.size() > 1) {
        copies.remove(copies.size() - 1);
        SmallOffice.delete(site);
        SmallOffice.link(copies.get(copies.size() - 1), site);
      }
      model.restore();
    }

    private String seen() throws Exception {
      Books books =
          new Books(
              ApprovalFiles.in(new HastyDisk(), folder.resolve("content")).read().approvals(),
              register());
      Optional<CardEntry> card = books.register().card(CARD);
      String words =
          card.map(each -> state(each) + " " + each.edition() + (each.current() ? " up" : " down"))
              .orElse("none");
      return "%s%s, %d issues, ledger %d, site %d, %s"
          .formatted(
              words,
              books.register().stops().isEmpty() ? "" : " stopped",
              books.ledger().last(Deed.ISSUE),
              books.ledger().acts().size(),
              books.register().lines().size(),
              books.problems().isEmpty() ? "together" : "apart");
    }

    /** Which state a card shows, told by the fingerprints met so far. */
    private String state(CardEntry card) {
      return states.computeIfAbsent(card.fingerprint(), any -> model.seen().substring(0, 1));
    }
  }
}
