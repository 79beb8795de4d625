package stackside.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.model.FootSwitch;
import stackside.model.Pedal;
import stackside.model.PedalAction;
import stackside.model.PedalColour;
import stackside.model.PedalSetting;
import stackside.model.PedalUse;
import stackside.model.Settings;

/**
 * What is to be said about each pedal of a foot switch: where it is for the person standing at it,
 * its colour, what it does, and what is set on it.
 *
 * @param pedals from left to right
 */
public record PedalPlan(FootSwitch footSwitch, List<Place> pedals) {

  public PedalPlan {
    pedals = List.copyOf(pedals);
  }

  /**
   * One pedal.
   *
   * @param side left, right, middle, or "only" for a single pedal
   * @param set mode and setting in lines; empty where a drawing speaks of no single answer
   */
  public record Place(String side, PedalColour colour, PedalAction action, List<String> set) {
    public Place {
      set = List.copyOf(set);
    }
  }

  /** The pedals alone. */
  public static PedalPlan of(FootSwitch footSwitch) {
    return plan(footSwitch, Optional.empty());
  }

  /** The pedals with what an answer sets on each. */
  public static PedalPlan of(FootSwitch footSwitch, Settings settings) {
    return plan(footSwitch, Optional.of(settings));
  }

  private static PedalPlan plan(FootSwitch footSwitch, Optional<Settings> settings) {
    List<Place> places = new ArrayList<>();
    List<Pedal> pedals = footSwitch.pedals();
    for (int i = 0; i < pedals.size(); i++) {
      PedalColour colour = pedals.get(i).colour().value();
      places.add(
          new Place(
              side(i, pedals.size()),
              colour,
              pedals.get(i).does().value(),
              settings.map(s -> words(s.pedal(colour))).orElse(List.of())));
    }
    return new PedalPlan(footSwitch, places);
  }

  private static String side(int number, int count) {
    if (count == 1) {
      return "Only pedal";
    }
    return number == 0 ? "Left" : number == count - 1 ? "Right" : "Middle";
  }

  /** What is set on a pedal: the mode as displayed, then its setting; or "unassigned". */
  public static List<String> words(PedalUse use) {
    return use.setting().map(PedalPlan::words).orElse(List.of("unassigned"));
  }

  private static List<String> words(PedalSetting setting) {
    String level = level(setting);
    String limit = setting.limit().map(fact -> Numbers.text(fact.value())).orElse("");
    String both =
        Stream.of(level, limit).filter(s -> !s.isEmpty()).collect(Collectors.joining(", "));
    String mode = setting.mode().value().name().value();
    return both.isEmpty() ? List.of(mode) : List.of(mode, both);
  }

  /** The level with the word that the display uses for it: {@code Effect 2}. */
  private static String level(PedalSetting setting) {
    if (setting.level().isEmpty()) {
      return "";
    }
    String scale = setting.mode().value().level().map(s -> s.name().value()).orElse("");
    return (scale + " " + setting.level().get().value().text()).strip().replace(' ', Numbers.BOUND);
  }
}
