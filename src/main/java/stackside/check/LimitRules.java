package stackside.check;

import static stackside.check.Rule.error;
import static stackside.check.Rule.question;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.model.Fact;
import stackside.model.Level;
import stackside.model.LevelScale;
import stackside.model.Mode;
import stackside.model.PedalSetting;
import stackside.model.Profile;
import stackside.model.PublishedOutput;
import stackside.model.Sentence;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.quantity.PowerRange;
import stackside.quantity.Watts;
import stackside.source.Location;

/**
 * Power limits and levels against the machine's description. Where none of several settings fits
 * it, the description is the one thing to look at.
 */
final class LimitRules {

  private static final int SEVERAL = 2;

  /**
   * One setting that does not fit.
   *
   * @param described what the description says of the control
   * @param all what to say at the description, if no setting fits it
   */
  private record Misfit(Mode mode, Finding finding, Location described, String all) {}

  /** Says what is wrong with a limit. */
  private interface WrongLimit {
    Misfit misfit(Mode mode, Fact<Watts> limit, Fact<PowerRange> range);
  }

  private static final int FEWEST_OTHERS = 2;

  /** Ten times, less what rounding to a step may take away. */
  private static final double FAR = 8;

  private LimitRules() {}

  static List<Rule<CheckedUnit>> rules() {
    return List.of(
        error(
            "limit-outside-range",
            "a power limit is lower or higher than the mode can be set to",
            LimitRules::limitOutsideRange),
        error(
            "limit-off-step",
            "a power limit lies between two steps of the control",
            LimitRules::limitOffStep),
        error(
            "level-unknown",
            "a level is one that the mode does not have",
            LimitRules::levelUnknown),
        error(
            "setting-incomplete",
            "a setting leaves out a level or a power limit that the mode needs",
            LimitRules::settingIncomplete),
        error(
            "setting-without-control",
            "a setting gives a level or a power limit that the mode has no control for",
            LimitRules::settingWithoutControl),
        question(
            "limit-ten-times-others",
            "a power limit is about ten times, or a tenth of, all others of its mode",
            LimitRules::limitTenTimesOthers));
  }

  private static List<Finding> limitOutsideRange(CheckedUnit checked) {
    return limits(
        checked.unit(), (limit, range) -> !range.holds(limit), LimitRules::limitOutsideRange);
  }

  private static Misfit limitOutsideRange(Mode mode, Fact<Watts> limit, Fact<PowerRange> range) {
    Watts lowest = range.value().from();
    Watts highest = range.value().to();
    String beyond =
        limit.value().compareTo(highest) > 0
            ? "above the highest that %s can be set to, " + highest
            : "below the lowest that %s can be set to, " + lowest;
    return new Misfit(
        mode,
        Finding.at(
                limit.at(),
                "limit " + limit.value() + " is " + beyond.formatted(Wording.quoted(mode)))
            .note(range.at(), "the machine's description says " + range.value().text())
            .help("correct the limit, or the machine's description if that is wrong"),
        range.at(),
        Wording.quoted(mode) + " is set outside " + lowest + " to " + highest);
  }

  /** A digit too many or too few shows only in comparison with other answers. */
  private static List<Finding> limitTenTimesOthers(
      CheckedUnit checked, Predicate<Profile> unanswered) {
    Map<ThingId, List<Fact<Watts>>> ofModes = new LinkedHashMap<>();
    checked.unit().profiles().stream()
        .flatMap(LimitRules::assigned)
        .forEach(
            it ->
                it.limit()
                    .ifPresent(
                        limit ->
                            ofModes
                                .computeIfAbsent(it.mode().value().id(), id -> new ArrayList<>())
                                .add(limit)));
    List<Finding> found = new ArrayList<>();
    checked.unit().profiles().stream()
        .filter(unanswered)
        .flatMap(LimitRules::assigned)
        .forEach(
            it ->
                it.limit()
                    .filter(limit -> isFarOff(limit, others(ofModes, it)))
                    .ifPresent(limit -> found.add(tenTimes(it, limit, others(ofModes, it)))));
    return found;
  }

  private static Stream<PedalSetting> assigned(Profile profile) {
    return profile.settings().stream().flatMap(settings -> settings.assigned().stream());
  }

  private static List<Fact<Watts>> others(
      Map<ThingId, List<Fact<Watts>>> ofModes, PedalSetting setting) {
    return ofModes.getOrDefault(setting.mode().value().id(), List.of()).stream()
        .filter(other -> !Optional.of(other).equals(setting.limit()))
        .toList();
  }

  private static boolean isFarOff(Fact<Watts> limit, List<Fact<Watts>> others) {
    double value = limit.value().value();
    return others.size() >= FEWEST_OTHERS
        && (others.stream().allMatch(it -> value >= FAR * it.value().value())
            || others.stream().allMatch(it -> FAR * value <= it.value().value()));
  }

  private static Finding tenTimes(
      PedalSetting setting, Fact<Watts> limit, List<Fact<Watts>> others) {
    return Finding.at(
            limit.at(),
            "limit %s is far from every other limit of %s: another answer says %s"
                .formatted(
                    limit.value(), Wording.quoted(setting.mode().value()), others.get(0).value()))
        .note(others.get(0).at(), "another limit of this mode")
        .help(
            "check for a digit too many or too few; if the limit is intended, say why under 'because'");
  }

  private static List<Finding> limitOffStep(CheckedUnit checked) {
    return limits(
        checked.unit(),
        (limit, range) -> range.holds(limit) && !range.onStep(limit),
        LimitRules::limitOffStep);
  }

  private static Misfit limitOffStep(Mode mode, Fact<Watts> limit, Fact<PowerRange> range) {
    String steps = "in steps of " + range.value().step();
    return new Misfit(
        mode,
        Finding.at(
                limit.at(),
                "limit %s cannot be set: %s goes %s"
                    .formatted(limit.value(), Wording.quoted(mode), steps))
            .note(range.at(), "the machine's description says " + range.value().text())
            .help("correct the limit, or the machine's description if that is wrong"),
        range.at(),
        Wording.quoted(mode) + " does not go " + steps);
  }

  private static List<Finding> limits(
      Unit unit, BiPredicate<Watts, PowerRange> isWrong, WrongLimit says) {
    return misfits(
        unit,
        setting -> {
          Mode mode = setting.mode().value();
          return setting.limit().stream()
              .flatMap(
                  limit ->
                      mode.powerLimit().stream()
                          .filter(range -> isWrong.test(limit.value(), range.value()))
                          .map(range -> says.misfit(mode, limit, range)));
        });
  }

  /** Looks at the levels in profiles and at those in the description of the mode itself. */
  private static List<Finding> levelUnknown(CheckedUnit checked) {
    List<Finding> inProfiles =
        misfits(
            checked.unit(),
            setting -> levelUnknown(setting.mode().value(), setting.level()).stream());
    Stream<Finding> inModes =
        checked.unit().modes().stream().flatMap(mode -> levelUnknown(mode).limit(1));
    return Stream.concat(inProfiles.stream(), inModes).toList();
  }

  private static Stream<Finding> levelUnknown(Mode mode) {
    Stream<Optional<Fact<Level>>> inTables =
        Stream.of(mode.peakVoltage(), mode.crestFactor(), mode.currentLimit(), mode.ratedPower())
            .flatMap(Optional::stream)
            .flatMap(table -> table.each().entrySet().stream())
            .map(entry -> Optional.of(new Fact<>(entry.getKey(), entry.getValue().at())));
    Stream<Optional<Fact<Level>>> inPublished =
        mode.published().stream().map(PublishedOutput::level);
    return Stream.concat(inTables, inPublished)
        .flatMap(level -> levelUnknown(mode, level).stream())
        .map(Misfit::finding);
  }

  private static Optional<Misfit> levelUnknown(Mode mode, Optional<Fact<Level>> level) {
    return level.flatMap(
        fact ->
            mode.level()
                .filter(scale -> !scale.levels().contains(fact.value()))
                .map(scale -> levelUnknown(mode, scale, fact)));
  }

  private static Misfit levelUnknown(Mode mode, LevelScale scale, Fact<Level> level) {
    return new Misfit(
        mode,
        Finding.at(
                level.at(),
                "%s has no %s".formatted(Wording.quoted(mode), Wording.level(mode, level.value())))
            .note(scale.at(), "the machine's description says " + Wording.levels(scale))
            .help("write a level as the display shows it, or correct the machine's description"),
        scale.at(),
        "%s has other levels than %s".formatted(Wording.quoted(mode), Wording.levels(scale)));
  }

  private static List<Finding> settingIncomplete(CheckedUnit checked) {
    return misfits(
        checked.unit(),
        setting -> {
          Mode mode = setting.mode().value();
          Stream<Misfit> level =
              mode.level().stream()
                  .filter(scale -> setting.level().isEmpty())
                  .map(
                      scale ->
                          settingIncomplete(
                              setting, Sentence.within(scale.name().value()), scale.at()));
          Stream<Misfit> limit =
              mode.powerLimit().stream()
                  .filter(range -> setting.limit().isEmpty())
                  .map(range -> settingIncomplete(setting, "a power limit", range.at()));
          return Stream.concat(level, limit);
        });
  }

  private static Misfit settingIncomplete(
      PedalSetting setting, String control, Location described) {
    Mode mode = setting.mode().value();
    return new Misfit(
        mode,
        Finding.at(
                setting.mode().at(),
                "%s is set by %s, but none is given here".formatted(Wording.quoted(mode), control))
            .note(described, "the machine's description of this control")
            .help("add the approved value"),
        described,
        "%s is not set by %s".formatted(Wording.quoted(mode), control));
  }

  private static List<Finding> settingWithoutControl(CheckedUnit checked) {
    return misfits(
        checked.unit(),
        setting -> {
          Mode mode = setting.mode().value();
          Stream<Misfit> level =
              setting.level().stream()
                  .filter(each -> mode.level().isEmpty())
                  .map(
                      each ->
                          settingWithoutControl(
                              mode, each.at(), "level '" + each.value() + "'", "levels"));
          Stream<Misfit> limit =
              setting.limit().stream()
                  .filter(each -> mode.powerLimit().isEmpty() && mode.ratedPower().isPresent())
                  .map(
                      each ->
                          settingWithoutControl(
                              mode, each.at(), "limit " + each.value(), "a power limit"));
          return Stream.concat(level, limit);
        });
  }

  private static Misfit settingWithoutControl(Mode mode, Location at, String what, String control) {
    return new Misfit(
        mode,
        Finding.at(
                at,
                "%s cannot be set: %s has no control for it".formatted(what, Wording.quoted(mode)))
            .note(mode.at(), "the machine's description of the mode")
            .help("remove it, or add the control to the machine's description"),
        mode.name().at(),
        "%s does have %s".formatted(Wording.quoted(mode), control));
  }

  /** One finding for each misfit, or one for a mode whose settings are all misfits. */
  private static List<Finding> misfits(Unit unit, Function<PedalSetting, Stream<Misfit>> judge) {
    List<PedalSetting> settings =
        unit.profiles().stream().flatMap(profile -> profile.pedalSettings().stream()).toList();
    List<Finding> found = new ArrayList<>();
    settings.stream()
        .flatMap(judge)
        .collect(
            Collectors.groupingBy(
                misfit -> List.of(misfit.mode().id(), misfit.described()),
                LinkedHashMap::new,
                Collectors.toList()))
        .values()
        .forEach(
            same -> {
              if (same.size() >= SEVERAL && same.size() == uses(settings, same.get(0).mode())) {
                found.add(ofAll(same));
              } else {
                same.forEach(misfit -> found.add(misfit.finding()));
              }
            });
    return found;
  }

  private static long uses(List<PedalSetting> settings, Mode mode) {
    return settings.stream()
        .filter(setting -> setting.mode().value().id().equals(mode.id()))
        .count();
  }

  private static Finding ofAll(List<Misfit> same) {
    Misfit first = same.get(0);
    return Finding.at(
            first.described(),
            "according to all %s profiles, %s".formatted(same.size(), first.all()))
        .note(first.finding().at(), "the first of them: " + first.finding().message())
        .help("correct the machine's description, or the profiles if they are all wrong");
  }
}
