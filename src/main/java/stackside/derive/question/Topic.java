package stackside.derive.question;

import java.util.List;
import stackside.derive.difference.Place;

/** A kind of question. */
interface Topic {

  /** What can be asked about a place, in the order of the content. */
  List<? extends Subject> subjects(Place place);

  /** All that is right there; where it is not exactly one, nothing is asked. */
  List<Reply> right(Place place, Subject subject);

  /** What is right in another place, of which the wrong answers are taken. */
  default List<Reply> elsewhere(Place other, Subject subject) {
    return right(other, subject);
  }

  /** What is not the right answer and would do as well, so that nobody may be told it is wrong. */
  default List<Reply> wouldDo(Place place, Subject subject) {
    return List.of();
  }

  /** How many of these a page bears. */
  default int most() {
    return 3;
  }
}
