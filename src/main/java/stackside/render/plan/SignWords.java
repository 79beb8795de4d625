package stackside.render.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import stackside.model.Machine;
import stackside.model.Sign;
import stackside.render.Words;

/** Describes what is seen and heard. Only lamps that the machine has are named. */
final class SignWords {
  private SignWords() {}

  static String of(Sign sign, Machine machine, Words own) {
    List<String> words = new ArrayList<>();
    sign.tone().ifPresent(tone -> words.add(own.say("card.tone-" + tone.value().word())));
    sign.lamps()
        .forEach(
            (id, colour) ->
                machine
                    .lamp(id)
                    .ifPresent(lamp -> words.add(lamp.name().value() + " " + colour.value())));
    sign.display().ifPresent(display -> words.add(own.say("card.display", display.value())));
    sign.tissue().ifPresent(tissue -> words.add(tissue.value()));
    return words.stream().map(WordLists::asSentence).collect(Collectors.joining(" "));
  }
}
