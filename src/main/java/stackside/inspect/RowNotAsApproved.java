package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.coverage.Cell;
import stackside.model.PedalColour;
import stackside.model.PedalSetting;
import stackside.model.Profile;
import stackside.model.Settings;
import stackside.render.Numbers;
import stackside.render.Words;
import stackside.render.plan.Face;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Compares the printed rows with the approved answers, value by value. */
final class RowNotAsApproved implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "row-not-as-approved",
          Severity.ERROR,
          "a row on a card is not byte for byte what was approved");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(InspectedCard card) {
    if (card.plan().face() != Face.SETTINGS) {
      return List.of();
    }
    List<TableRow> rows = TableRow.of(card.seen());
    List<Problem> problems = new ArrayList<>();
    List<Profile> profiles = profiles(card);
    List<PedalColour> pedals = pedals(card, profiles);
    for (Profile profile : profiles) {
      List<String> approved = approved(profile, pedals, card.publication().words());
      String caution = caution(profile, card.publication().words());
      if (rows.stream()
          .noneMatch(row -> same(row.values(), approved) && row.scope().endsWith(caution))) {
        problems.add(
            FAULT.at(
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
    return problems;
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
        .map(RowNotAsApproved::pedal)
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
}
