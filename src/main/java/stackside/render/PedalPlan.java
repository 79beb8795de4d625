package stackside.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.model.Fact;
import stackside.model.FootSwitch;
import stackside.model.Mode;
import stackside.model.Pedal;
import stackside.model.PedalAction;
import stackside.model.PedalColour;
import stackside.model.PedalSetting;
import stackside.model.PedalUse;
import stackside.model.Settings;

/**
 * What a foot switch says about each pedal: where it is for the person standing at it, its colour,
 * its function and its setting.
 *
 * @param pedals from left to right
 * @param words the drawing's own words
 */
public record PedalPlan(FootSwitch footSwitch, List<Place> pedals, Words words) {

  public PedalPlan {
    pedals = List.copyOf(pedals);
  }

  /**
   * One pedal.
   *
   * @param side left, right, middle, or "only" for a single pedal
   * @param set mode and setting in lines; empty if the drawing is not about one answer
   * @param forbidden whether the answer must not use it
   */
  public record Place(
      String side, PedalColour colour, PedalAction action, List<String> set, boolean forbidden) {
    public Place {
      set = List.copyOf(set);
    }
  }

  /** The pedals without any settings. */
  public static PedalPlan of(FootSwitch footSwitch, Words words) {
    return plan(footSwitch, Optional.empty(), words);
  }

  /** The pedals with what an answer sets on each. */
  public static PedalPlan of(FootSwitch footSwitch, Settings settings, Words words) {
    return plan(footSwitch, Optional.of(settings), words);
  }

  private static PedalPlan plan(FootSwitch footSwitch, Optional<Settings> settings, Words words) {
    List<Place> places = new ArrayList<>();
    List<Pedal> pedals = footSwitch.pedals();
    for (int i = 0; i < pedals.size(); i++) {
      PedalColour colour = pedals.get(i).colour().value();
      places.add(
          new Place(
              side(i, pedals.size(), words),
              colour,
              pedals.get(i).does().value(),
              settings.map(s -> words(s, colour, words)).orElse(List.of()),
              settings.filter(s -> s.forbids(colour)).isPresent()));
    }
    return new PedalPlan(footSwitch, places, words);
  }

  private static String side(int number, int count, Words words) {
    if (count == 1) {
      return words.say("pedals.only");
    }
    return words.say(
        number == 0 ? "pedals.left" : number == count - 1 ? "pedals.right" : "pedals.middle");
  }

  /** What a pedal does in an answer: its setting, or a note that it must not be pressed. */
  public static List<String> words(Settings settings, PedalColour colour, Words words) {
    return settings.forbids(colour)
        ? List.of(words.say("answer.do-not-press"))
        : words(settings.pedal(colour), words);
  }

  /** The setting of a pedal: the mode as displayed, then its level and limit; or "unassigned". */
  public static List<String> words(PedalUse use, Words words) {
    return use.setting()
        .map(PedalPlan::words)
        .orElseGet(() -> List.of(words.say("answer.unassigned")));
  }

  private static List<String> words(PedalSetting setting) {
    Mode mode = setting.mode().value();
    String set =
        SettingWords.of(mode, setting.level().map(Fact::value), setting.limit().map(Fact::value));
    return set.isEmpty() ? List.of(mode.name().value()) : List.of(mode.name().value(), set);
  }
}
