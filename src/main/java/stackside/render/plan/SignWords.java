package stackside.render.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import stackside.model.Lamp;
import stackside.model.Machine;
import stackside.model.Sign;
import stackside.model.Tone;

/** Puts what is seen and heard into words, with the lamps' names as on the machine. */
final class SignWords {
  private SignWords() {}

  static String of(Sign sign, Machine machine) {
    List<String> words = new ArrayList<>();
    sign.tone().ifPresent(tone -> words.add(tone(tone.value())));
    sign.lamps()
        .forEach(
            (id, colour) ->
                machine
                    .lamp(id)
                    .map(Lamp::name)
                    .ifPresent(name -> words.add(name.value() + " " + colour.value())));
    sign.display().ifPresent(display -> words.add("display says " + display.value()));
    sign.tissue().ifPresent(tissue -> words.add(tissue.value()));
    return words.stream().map(WordLists::asSentence).collect(Collectors.joining(" "));
  }

  private static String tone(Tone tone) {
    return switch (tone) {
      case USUAL -> "usual tone";
      case ALARM -> "alarm tone";
      case NONE -> "no tone";
      case DIFFERENT -> "different tone";
    };
  }
}
