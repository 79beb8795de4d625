package stackside.render.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stackside.derive.coverage.Cell;
import stackside.model.PedalColour;
import stackside.model.PedalSetting;
import stackside.model.PedalUse;
import stackside.model.Profile;
import stackside.model.Settings;
import stackside.render.OutputFile;
import stackside.render.Publication;
import stackside.render.plan.CardPlan;
import stackside.render.plan.Face;

/** Checks the demonstration's cards with programs that share no code with ours. */
final class CardToolsTest {

  @TempDir static Path folder;

  private static final Publication PUBLICATION = Demonstration.publication();
  private static final List<CardPlan> PLANS = Demonstration.plans();

  @BeforeAll
  static void write() throws IOException {
    for (OutputFile card : Demonstration.cards()) {
      Path file = folder.resolve(card.path());
      Files.createDirectories(file.getParent());
      Files.write(file, card.bytes());
    }
  }

  private static String text(CardPlan plan) {
    return Tool.named("pdftotext")
        .run(folder, "-raw", "-enc", "UTF-8", plan.path(), "-")
        .replaceAll("\\s+", " ");
  }

  @Test
  void everyPlanIsPrinted() {
    assertThat(PLANS)
        .hasSizeGreaterThan(12)
        .allMatch(plan -> Files.exists(folder.resolve(plan.path())));
  }

  @Test
  void popplerReadsEveryApprovedAnswerRowByRow() {
    int rows = 0;
    for (CardPlan plan : PLANS) {
      if (plan.face() == Face.SETTINGS) {
        String text = text(plan);
        for (Profile profile : profiles(plan)) {
          assertThat(text).as(plan.name() + ": " + profile.id()).contains(row(plan, profile));
          rows++;
        }
      }
    }
    assertThat(rows).isGreaterThan(30);
  }

  private static List<Profile> profiles(CardPlan plan) {
    return PUBLICATION.analysis().coverage().of(plan.room(), plan.asset()).stream()
        .filter(cell -> plan.part().map(p -> p.holds(cell.lesion(), cell.site())).orElse(true))
        .map(Cell::cover)
        .flatMap(cover -> Stream.concat(cover.answer().stream(), cover.alternatives().stream()))
        .distinct()
        .toList();
  }

  /** What the row must say, derived from the model alone. */
  private static String row(CardPlan plan, Profile profile) {
    String only =
        profile
            .settings()
            .flatMap(Settings::pressOnly)
            .map(pedal -> pedal.value() == PedalColour.BLUE ? "Blue" : "Yellow")
            .map(pedal -> pedal + " pedal only. ")
            .orElse("");
    String caution =
        profile.caution().map(prose -> "Caution: " + prose.plain().strip() + " ").orElse("");
    return only + caution.replaceAll("\\s+", " ") + answer(plan, profile);
  }

  private static String answer(CardPlan plan, Profile profile) {
    if (profile.cold().isPresent()) {
      return "Cold, no current. " + profile.cold().get().value();
    }
    if (profile.notApproved().isPresent()) {
      return "Not approved. " + profile.notApproved().get().value().replaceFirst("\\.$", "") + ".";
    }
    Settings settings = profile.settings().orElseThrow();
    List<String> values = new ArrayList<>();
    settings
        .program()
        .ifPresentOrElse(
            program -> values.add(program.slot().value() + " " + program.shownAs().value()),
            () -> values.add("By hand"));
    values.add(settings.socket().value().label().value());
    values.add(settings.instrument().value().name().value());
    settings.argonFlow().ifPresent(flow -> values.add("argon " + flow.value().text()));
    for (PedalColour colour : PedalColour.values()) {
      if (hasPedal(plan, colour)) {
        boolean other = settings.pressOnly().filter(only -> only.value() != colour).isPresent();
        values.add(other ? "Do not press" : pedal(settings.pedal(colour)));
      }
    }
    return String.join(" ", values);
  }

  /** Whether the person in this room has such a pedal for this generator. */
  private static boolean hasPedal(CardPlan plan, PedalColour colour) {
    return PUBLICATION.unit().footSwitchesFor(plan.room(), plan.asset().machine().value()).stream()
        .flatMap(footSwitch -> footSwitch.pedals().stream())
        .anyMatch(pedal -> pedal.colour().value() == colour);
  }

  private static String pedal(PedalUse use) {
    if (use.setting().isEmpty()) {
      return "Unassigned";
    }
    PedalSetting setting = use.setting().get();
    String level =
        setting
            .level()
            .map(
                fact ->
                    " "
                        + setting.mode().value().level().orElseThrow().name().value()
                        + " "
                        + fact.value().text())
            .orElse("");
    String limit = setting.limit().map(fact -> " " + fact.value().text()).orElse("");
    return setting.mode().value().name().value() + level + limit;
  }

  @Test
  void popplerReadsContactsAndIdentityOnEveryCard() {
    for (CardPlan plan : PLANS) {
      String text = text(plan);
      assertThat(text)
          .contains(
              plan.asset().id().slug(),
              plan.title(),
              plan.address(),
              plan.fingerprint().shortText());
      plan.room()
          .location()
          .value()
          .contacts()
          .forEach(
              contact ->
                  assertThat(text).contains(contact.phone().value(), contact.role().value()));
    }
  }

  @Test
  void qpdfFindsNothingWrong() {
    Tool qpdf = Tool.named("qpdf");
    for (CardPlan plan : PLANS) {
      assertThat(qpdf.run(folder, "--check", plan.path()))
          .contains("No syntax or stream encoding errors found");
    }
  }

  @Test
  void everyFontIsEmbeddedAndBothFacesAreTheSameFamily() {
    Tool pdffonts = Tool.named("pdffonts");
    for (CardPlan plan : PLANS) {
      List<String> fonts = pdffonts.run(folder, plan.path()).lines().skip(2).toList();
      assertThat(fonts)
          .as(plan.name())
          .isNotEmpty()
          .allSatisfy(
              line ->
                  assertThat(line)
                      .matches("[A-Z]{6}\\+AtkinsonHyperlegibleNext-\\w+ .* yes yes yes .*"));
    }
  }

  @Test
  @Tag("thorough")
  void anotherDecoderReadsTheCodeOfTheRenderedPage() {
    Tool pdftoppm = Tool.named("pdftoppm");
    Tool zbarimg = Tool.named("zbarimg");
    for (CardPlan plan : PLANS) {
      pdftoppm.run(folder, "-r", "150", "-gray", "-png", "-singlefile", plan.path(), plan.name());
      assertThat(
              zbarimg
                  .run(
                      folder,
                      "--nodbus",
                      "-Sdisable",
                      "-Sqrcode.enable",
                      "--quiet",
                      "--raw",
                      plan.name() + ".png")
                  .strip())
          .isEqualTo(plan.held());
    }
  }
}
