package stackside.derive.signed;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stackside.model.Condition;
import stackside.model.Evidence;
import stackside.model.Fact;
import stackside.model.Lamp;
import stackside.model.LampId;
import stackside.model.Machine;
import stackside.model.Plug;
import stackside.model.Response;
import stackside.model.Socket;

/**
 * What a signature under a machine covers: its front panel, how a socket gets selected, how it
 * answers each condition, and the modes that settings are chosen from.
 */
final class MachineFacts {
  private MachineFacts() {}

  static FactList of(Machine machine) {
    FactList facts =
        new FactList()
            .text("name", machine.name())
            .list("software", machine.software().stream().map(f -> Json.text(f.value())).toList())
            .text("load-range", machine.loadRange().value().text())
            .word("monitor", machine.monitor())
            .ids("foot-switches", machine.footSwitches())
            .list("plugs", machine.plugs().stream().map(MachineFacts::of).toList())
            .list("sockets", machine.sockets().stream().map(MachineFacts::of).toList())
            .word("selects-socket", machine.selectsSocket())
            .list("modes", machine.modes().stream().map(mode -> ModeFacts.of(mode).json()).toList())
            .list("lamps", machine.lamps().stream().map(MachineFacts::of).toList());
    machine.socketAtPowerOn().ifPresent(socket -> facts.text("at-power-on", socket.id().local()));
    machine.programs().ifPresent(range -> facts.text("programs", range.value().text()));
    FactList answers = new FactList();
    for (Map.Entry<Condition, Response> answer : machine.answers().entrySet()) {
      answers.members(answer.getKey().word(), of(answer.getValue()));
    }
    return facts.members("answers", answers);
  }

  private static Json.Members of(Plug plug) {
    String pins =
        plug.shape().value().pins().stream()
            .map(pin -> CanonicalJson.number(pin.x()) + ", " + CanonicalJson.number(pin.y()))
            .collect(Collectors.joining("; "));
    return new FactList()
        .text("id", plug.id().toString())
        .text("name", plug.name())
        .text("pins", pins)
        .json();
  }

  private static Json.Members of(Socket socket) {
    List<Json> plugs =
        socket.takes().stream()
            .map(plug -> plug.value().toString())
            .sorted()
            .map(Json::text)
            .toList();
    return new FactList()
        .text("id", socket.id().local())
        .text("label", socket.label())
        .text("name", socket.name())
        .text("place", socket.place().value().text())
        .word("kind", socket.kind())
        .list("takes", plugs)
        .flag("senses-plug", socket.sensesPlug())
        .number("program-on-plugging", socket.programOnPlugging())
        .json();
  }

  private static Json.Members of(Lamp lamp) {
    return new FactList().text("id", lamp.id().toString()).text("name", lamp.name()).json();
  }

  private static FactList of(Response response) {
    FactList facts = new FactList().text("display", response.display());
    response.tone().ifPresent(tone -> facts.word("tone", tone));
    response.output().ifPresent(output -> facts.word("output", output));
    return facts
        .members("lamps", lamps(response.lamps()))
        .members("evidence", of(response.evidence().value()));
  }

  static FactList lamps(Map<LampId, Fact<String>> lamps) {
    FactList facts = new FactList();
    lamps.forEach((lamp, colour) -> facts.text(lamp.toString(), colour));
    return facts;
  }

  private static FactList of(Evidence evidence) {
    FactList facts = new FactList().text("basis", evidence.basis().word());
    evidence
        .observation()
        .ifPresent(
            seen ->
                facts
                    .text("observed", seen.observed().value().toString())
                    .text("asset", seen.asset().value().slug())
                    .text("software", seen.software()));
    return facts;
  }
}
