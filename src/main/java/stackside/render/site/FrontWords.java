package stackside.render.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stackside.model.LampId;
import stackside.model.Machine;
import stackside.model.Response;
import stackside.model.Unsaid;

/**
 * What the lamps and the display of a machine show when something is wrong: what is described, and
 * of all the rest that it is dark or not known.
 */
record FrontWords(Machine machine, Unsaid rest, PageContext here) {

  /** The colours that an answer gives. */
  static Map<LampId, String> colours(Response response) {
    Map<LampId, String> colours = new LinkedHashMap<>();
    response.lamps().forEach((lamp, colour) -> colours.put(lamp, colour.value()));
    return colours;
  }

  /** Every lamp of the machine with its name, those that are described first. */
  List<String> lamps(Map<LampId, String> described) {
    List<String> words = new ArrayList<>();
    described.forEach((lamp, colour) -> words.add(machine.lampName(lamp) + " " + colour));
    machine.lamps().stream()
        .filter(lamp -> !described.containsKey(lamp.id()))
        .forEach(lamp -> words.add(lamp.name().value() + " " + unsaid()));
    return words;
  }

  /** What the display shows. */
  String display(Optional<String> shown) {
    return shown
        .map(words -> here.say("sign.display", words))
        .orElse(here.say("sign.display-unsaid", unsaid()));
  }

  /** How what is not described looks. */
  String unsaid() {
    return here.choice(rest);
  }
}
