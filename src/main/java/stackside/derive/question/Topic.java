package stackside.derive.question;

import java.util.List;
import stackside.derive.difference.Place;

/** A kind of question. */
interface Topic {

  /** What can be asked about a place, in the order of the content. */
  List<? extends Subject> subjects(Place place);

  /** All right answers there. Unless there is exactly one, the question is not asked. */
  List<Reply> right(Place place, Subject subject);

  /** What is right in another place; wrong answers are taken from these. */
  default List<Reply> elsewhere(Place other, Subject subject) {
    return right(other, subject);
  }

  /**
   * Answers other than the right one that would do equally well, so that nobody may be told they
   * are wrong.
   */
  default List<Reply> wouldDo(Place place, Subject subject) {
    return List.of();
  }

  /** The maximum number of these questions on a page. */
  default int most() {
    return 3;
  }
}
