package stackside.derive.question;

import java.util.List;
import stackside.derive.difference.RoomAtAsset;
import stackside.derive.question.Reply.Card;
import stackside.derive.question.Subject.CurrentCard;

/**
 * Which card is the current one: the one with the generator's own number, in the edition in use.
 */
record CardTopic(List<CardInUse> cards) implements Topic {

  CardTopic {
    cards = List.copyOf(cards);
  }

  @Override
  public List<CurrentCard> subjects(RoomAtAsset place) {
    return cards.stream()
        .filter(card -> card.place().is(place))
        .map(card -> new CurrentCard(card.title()))
        .distinct()
        .toList();
  }

  @Override
  public List<Reply> right(RoomAtAsset place, Subject subject) {
    return subject instanceof CurrentCard asked
        ? cards.stream()
            .filter(card -> card.place().is(place) && card.title().equals(asked.title()))
            .<Reply>map(CardTopic::reply)
            .toList()
        : List.of();
  }

  @Override
  public List<Reply> elsewhere(RoomAtAsset other, Subject subject) {
    return cards.stream()
        .filter(card -> card.place().is(other))
        .<Reply>map(CardTopic::reply)
        .toList();
  }

  private static Reply reply(CardInUse card) {
    return new Card(card.place().asset(), card.edition());
  }

  @Override
  public int most() {
    return 1;
  }
}
