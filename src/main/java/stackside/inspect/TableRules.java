package stackside.inspect;

import static stackside.check.Rule.error;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.check.Finding;
import stackside.check.Rule;
import stackside.derive.coverage.Cell;
import stackside.model.PedalColour;
import stackside.model.PedalSetting;
import stackside.model.Profile;
import stackside.model.Settings;
import stackside.render.Numbers;
import stackside.render.Words;
import stackside.render.plan.Face;

/** What the cells and rows of a finished card say, and what is read aloud. */
final class TableRules {

  private static final double WHITE_FROM = 97;

  private static final double DARK_TO = 80;

  private TableRules() {}

  static List<Rule<InspectedCard>> rules() {
    return List.of(
        error("empty-cell", "a cell of a card's table is empty", TableRules::emptyCell),
        error(
            "row-not-as-approved",
            "a row on a card is not byte for byte what was approved",
            TableRules::rowNotAsApproved),
        error(
            "refusal-like-setting",
            "what must not be set or pressed looks like a setting",
            TableRules::refusalLikeSetting),
        error(
            "figure-without-words",
            "a card cannot be followed by ear",
            TableRules::figureWithoutWords));
  }

  private static List<Finding> emptyCell(InspectedCard card) {
    return card.seen().structure().stream()
        .filter(element -> element.role().equals("TD") || element.role().equals("TH"))
        .filter(element -> element.text().isBlank())
        .map(element -> Finding.at(card.at(), card.name() + " has an empty cell"))
        .toList();
  }

  private static List<Finding> rowNotAsApproved(InspectedCard card) {
    if (card.plan().face() != Face.SETTINGS) {
      return List.of();
    }
    List<TableRow> rows = TableRow.of(card.seen());
    List<Finding> found = new ArrayList<>();
    List<Profile> profiles = profiles(card);
    List<PedalColour> pedals = pedals(card, profiles);
    for (Profile profile : profiles) {
      List<String> approved = approved(profile, pedals, card.publication().words());
      String caution = caution(profile, card.publication().words());
      if (rows.stream()
          .noneMatch(row -> same(row.values(), approved) && row.scope().endsWith(caution))) {
        found.add(
            Finding.at(
                profile.at(),
                card.name()
                    + " has no row '"
                    + (caution.isEmpty() ? "" : caution + " | ")
                    + String.join(" | ", approved)
                    + "' for '"
                    + profile.title()
                    + "'"));
      }
    }
    return found;
  }

  /** The one preferred answer and the alternatives to each question of this card. */
  private static List<Profile> profiles(InspectedCard card) {
    return card
        .publication()
        .analysis()
        .coverage()
        .of(card.plan().room(), card.plan().asset())
        .stream()
        .filter(
            cell ->
                card.plan().part().map(part -> part.holds(cell.lesion(), cell.site())).orElse(true))
        .map(Cell::cover)
        .flatMap(cover -> Stream.concat(cover.answer().stream(), cover.alternatives().stream()))
        .distinct()
        .toList();
  }

  /** A column for each pedal that the room has, and for each that an answer sets. */
  private static List<PedalColour> pedals(InspectedCard card, List<Profile> profiles) {
    List<PedalColour> there =
        card.publication()
            .unit()
            .pedalsFor(card.plan().room(), card.plan().asset().machine().value());
    return Stream.of(PedalColour.values())
        .filter(
            colour ->
                there.contains(colour)
                    || profiles.stream()
                        .flatMap(profile -> profile.settings().stream())
                        .anyMatch(settings -> settings.pedal(colour).setting().isPresent()))
        .toList();
  }

  /** What the line over the values must end in. */
  private static String caution(Profile profile, Words words) {
    Stream<String> pedal =
        profile.settings().flatMap(Settings::pressOnly).stream()
            .map(only -> words.say("card.press-only-" + only.value().word()));
    Stream<String> caution =
        profile.caution().stream()
            .map(prose -> words.say("card.caution", stopped(printed(prose.plain()))));
    return Stream.concat(pedal, caution).collect(Collectors.joining(" "));
  }

  /** The values as the content has them, put together here and not by the planner. */
  private static List<String> approved(Profile profile, List<PedalColour> pedals, Words words) {
    return profile
        .settings()
        .map(settings -> values(settings, pedals, words))
        .orElseGet(() -> List.of(told(profile, words)));
  }

  private static String told(Profile profile, Words words) {
    String cold =
        profile.cold().map(how -> words.say("card.cold") + " " + printed(how.value())).orElse("");
    String not =
        profile
            .notApproved()
            .map(
                instead -> words.say("card.not-approved") + " " + stopped(printed(instead.value())))
            .orElse("");
    String ask =
        profile.notApproved().isEmpty()
            ? ""
            : profile
                .ask()
                .map(role -> " " + words.say("card.ask", role.value().title()))
                .orElse("");
    return cold + not + ask;
  }

  /** Values letter by letter; sentences but for the capitals with which they begin. */
  private static boolean same(List<String> printed, List<String> approved) {
    return (approved.size() == 1 && printed.size() == 1)
        ? printed.get(0).equalsIgnoreCase(approved.get(0))
        : printed.equals(approved);
  }

  private static String stopped(String words) {
    return words.endsWith(".") ? words : words + ".";
  }

  private static List<String> values(Settings settings, List<PedalColour> pedals, Words words) {
    String program =
        settings
            .program()
            .map(each -> each.slot().value() + " " + printed(each.shownAs().value()))
            .orElseGet(() -> words.say("card.by-hand"));
    String argon =
        settings
            .argonFlow()
            .map(flow -> " " + words.say("card.argon", flow.value().text()))
            .orElse("");
    return Stream.concat(
            Stream.of(
                program,
                settings.socket().value().label().value(),
                printed(settings.instrument().value().title()) + argon),
            pedals.stream().map(colour -> pedal(settings, colour, words)))
        .toList();
  }

  private static String pedal(Settings settings, PedalColour colour, Words words) {
    if (settings.pressOnly().filter(only -> only.value() != colour).isPresent()) {
      return words.say(
          settings.pedal(colour).setting().isPresent() ? "card.do-not-press" : "card.unassigned");
    }
    return settings
        .pedal(colour)
        .setting()
        .map(TableRules::pedal)
        .orElseGet(() -> words.say("card.unassigned"));
  }

  private static String pedal(PedalSetting setting) {
    Optional<String> level =
        setting
            .level()
            .map(
                each ->
                    setting
                            .mode()
                            .value()
                            .level()
                            .map(scale -> scale.name().value() + " ")
                            .orElse("")
                        + each.value());
    Optional<String> limit = setting.limit().map(each -> each.value().text());
    return Stream.of(Optional.of(setting.mode().value().title()), level, limit)
        .flatMap(Optional::stream)
        .collect(Collectors.joining(" "));
  }

  private static String printed(String words) {
    return InspectedCard.spaced(Numbers.bind(words)).strip().replaceAll("\\s+", " ");
  }

  private static List<Finding> refusalLikeSetting(InspectedCard card) {
    List<String> refusals = refusals(card.publication().words());
    List<PrintedWords> cells =
        card.seen().words().stream().filter(words -> words.roles().contains("TD")).toList();
    List<Box> grounds =
        card.seen().areas().stream().filter(TableRules::isGround).map(PaintedArea::box).toList();
    List<Finding> found = new ArrayList<>();
    for (PrintedWords words : cells) {
      if (refuses(words, refusals)
          && grounds.stream().noneMatch(ground -> ground.holds(words.box()))) {
        found.add(Finding.at(card.at(words), "'" + words.text().strip() + "' is on white"));
      }
    }
    for (Box ground : grounds) {
      List<PrintedWords> on = cells.stream().filter(words -> ground.overlaps(words.box())).toList();
      if (on.stream().noneMatch(words -> refuses(words, refusals))) {
        found.add(Finding.at(card.at(), card.name() + " shades a cell that refuses nothing"));
      }
    }
    return found;
  }

  /** How words begin that forbid. */
  private static List<String> refusals(Words words) {
    return Stream.of(
            words.say("card.do-not-press"),
            words.say("card.not-approved"),
            words.say("card.no-answer"),
            words.say("card.several"),
            words.say("card.not-on-this", ""))
        .map(each -> each.strip().replaceFirst("\\.$", "").strip())
        .toList();
  }

  private static boolean refuses(PrintedWords words, List<String> refusals) {
    String text = words.text().strip();
    return refusals.stream().anyMatch(text::startsWith);
  }

  private static boolean isGround(PaintedArea area) {
    return !area.inFigure()
        && area.fill()
            .filter(fill -> !fill.coloured())
            .filter(fill -> fill.lightness() > DARK_TO && fill.lightness() < WHITE_FROM)
            .isPresent();
  }

  private static List<Finding> figureWithoutWords(InspectedCard card) {
    List<Finding> found = new ArrayList<>();
    List<StructureElement> structure = card.seen().structure();
    for (StructureElement element : structure) {
      if (element.role().equals("Figure") && element.alternative().orElse("").isBlank()) {
        found.add(Finding.at(card.at(), card.name() + " has a drawing without words"));
      }
      if (element.role().equals("TH") && element.scope().isEmpty()) {
        found.add(Finding.at(card.at(), "the header cell '" + element.text() + "' heads nothing"));
      }
    }
    if (structure.stream().noneMatch(element -> element.role().equals("H1"))) {
      found.add(Finding.at(card.at(), card.name() + " has no heading"));
    }
    return found;
  }
}
