package stackside.derive.question;

import java.util.List;
import java.util.stream.Stream;
import stackside.derive.difference.Place;
import stackside.derive.question.Reply.OnePedal;
import stackside.derive.question.Subject.OnPedal;
import stackside.model.PedalColour;

/** What a pedal has in an answer. */
record OnPedalTopic(Served served) implements Topic {

  @Override
  public List<OnPedal> subjects(Place place) {
    return served.questions(place).stream()
        .flatMap(
            answer -> Stream.of(PedalColour.values()).map(colour -> new OnPedal(answer, colour)))
        .toList();
  }

  @Override
  public List<Reply> right(Place place, Subject subject) {
    if (!(subject instanceof OnPedal asked)) {
      return List.of();
    }
    return served.answers(place, asked.answer()).stream()
        .flatMap(profile -> profile.settings().stream())
        .<Reply>map(settings -> new OnePedal(settings.pedal(asked.colour())))
        .toList();
  }
}
