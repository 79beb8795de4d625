package stackside.derive.question;

import java.util.List;
import java.util.stream.Stream;
import stackside.derive.difference.RoomAtAsset;
import stackside.derive.question.Reply.OnePedal;
import stackside.derive.question.Subject.OnPedal;
import stackside.model.PedalColour;

/** What is set on a pedal in an answer. */
record OnPedalTopic(AnswersByPlace served) implements Topic {

  @Override
  public List<OnPedal> subjects(RoomAtAsset place) {
    return served.questions(place).stream()
        .flatMap(
            answer -> Stream.of(PedalColour.values()).map(colour -> new OnPedal(answer, colour)))
        .filter(asked -> !forbidden(place, asked))
        .toList();
  }

  /** Nobody should learn the setting of a pedal that must be left alone. */
  private boolean forbidden(RoomAtAsset place, OnPedal asked) {
    return served.answers(place, asked.answer()).stream()
        .flatMap(profile -> profile.settings().stream())
        .anyMatch(settings -> settings.forbids(asked.colour()));
  }

  @Override
  public List<Reply> right(RoomAtAsset place, Subject subject) {
    if (!(subject instanceof OnPedal asked)) {
      return List.of();
    }
    return served.answers(place, asked.answer()).stream()
        .flatMap(profile -> profile.settings().stream())
        .<Reply>map(settings -> new OnePedal(settings.pedal(asked.colour())))
        .toList();
  }
}
