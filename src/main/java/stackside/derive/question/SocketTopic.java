package stackside.derive.question;

import java.util.List;
import stackside.derive.circuit.OutcomeClass;
import stackside.derive.difference.RoomAtAsset;
import stackside.derive.question.Reply.SocketLabel;
import stackside.derive.question.Subject.SocketFor;
import stackside.model.Settings;
import stackside.model.ThingId;

/** Which socket takes an instrument. */
record SocketTopic(AnswersByPlace served) implements Topic {

  @Override
  public List<SocketFor> subjects(RoomAtAsset place) {
    return served
        .settings(place)
        .map(settings -> new SocketFor(settings.instrument().value()))
        .distinct()
        .toList();
  }

  @Override
  public List<Reply> right(RoomAtAsset place, Subject subject) {
    return subject instanceof SocketFor asked
        ? served
            .settings(place)
            .filter(settings -> isOf(settings, asked))
            .<Reply>map(settings -> new SocketLabel(settings.socket().value().label().value()))
            .toList()
        : List.of();
  }

  /** Sockets in which it would work equally well. */
  @Override
  public List<Reply> wouldDo(RoomAtAsset place, Subject subject) {
    return subject instanceof SocketFor asked
        ? served.profiles(place).stream()
            .filter(profile -> profile.settings().filter(each -> isOf(each, asked)).isPresent())
            .flatMap(
                profile ->
                    served.analysis().circuits().wrongSockets(profile, place.room()).stream())
            .filter(outcome -> outcome.outcomeClass() == OutcomeClass.RIGHT)
            .flatMap(outcome -> outcome.deviation().socket().stream())
            .<Reply>map(socket -> new SocketLabel(socket.label().value()))
            .toList()
        : List.of();
  }

  private static boolean isOf(Settings settings, SocketFor asked) {
    ThingId instrument = settings.instrument().value().id();
    return instrument.equals(asked.instrument().id());
  }
}
