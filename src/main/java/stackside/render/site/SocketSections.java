package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import stackside.model.ConnectorId;
import stackside.model.Machine;
import stackside.model.Socket;
import stackside.render.Links;
import stackside.render.Numbers;
import stackside.render.site.Part.Facts;

/** One socket, as a section on the page of its machine's front panel. */
final class SocketSections {

  private SocketSections() {}

  static Section of(Machine machine, Socket socket, PageContext here) {
    List<Facts.Fact> facts = new ArrayList<>();
    facts.add(Answers.fact(here, "label", RichLine.of(TextPiece.shown(socket.label().value()))));
    facts.add(Answers.fact(here, "place", RichLine.of(here.spans().text(socket.place().value()))));
    facts.add(Answers.fact(here, "socket-kind", RichLine.of(here.choice(socket.kind().value()))));
    facts.add(
        Answers.fact(
            here,
            "takes",
            socket.takes().stream()
                .map(form -> RichLine.of(plug(machine, form.value())))
                .toArray(RichLine[]::new)));
    facts.add(
        Answers.fact(
            here,
            "senses",
            RichLine.of(here.say(socket.noticesPlug() ? "socket.senses" : "socket.senses-not"))));
    socket
        .programOnPlugging()
        .ifPresent(
            slot ->
                facts.add(
                    Answers.fact(
                        here, "program-on-plugging", RichLine.of(Numbers.count(slot.value())))));
    facts.add(mentioned(socket, here));
    return new Section(
        Links.anchor(socket.id()),
        here.say("socket.heading", socket.label().value(), socket.name().value()),
        List.of(new Facts(facts.stream().filter(fact -> !fact.values().isEmpty()).toList())));
  }

  private static String plug(Machine machine, ConnectorId form) {
    return machine.plug(form).map(plug -> plug.name().value()).orElse(form.slug());
  }

  private static Facts.Fact mentioned(Socket socket, PageContext here) {
    return new Facts.Fact(
        here.say("section.mentions"),
        here.site().mentions().of(socket.id()).stream()
            .filter(id -> !id.slug().equals(owner(socket)))
            .map(here::linkWithKind)
            .toList());
  }

  private static String owner(Socket socket) {
    return socket.id().slug().substring(0, Math.max(0, socket.id().slug().indexOf('/')));
  }
}
