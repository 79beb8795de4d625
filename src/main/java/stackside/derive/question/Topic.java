package stackside.derive.question;

import java.util.List;
import stackside.derive.difference.RoomAtAsset;

/** A kind of question. */
interface Topic {

  /** What can be asked about a place, in the order of the content. */
  List<? extends Subject> subjects(RoomAtAsset place);

  /** All right answers there. Unless there is exactly one, the question is not asked. */
  List<Reply> right(RoomAtAsset place, Subject subject);

  /** What is right in another place; wrong answers are taken from these. */
  default List<Reply> elsewhere(RoomAtAsset other, Subject subject) {
    return right(other, subject);
  }

  /**
   * Answers other than the right one that would do equally well, so that nobody may be told they
   * are wrong.
   */
  default List<Reply> wouldDo(RoomAtAsset place, Subject subject) {
    return List.of();
  }

  /** The maximum number of these questions on a page. */
  default int most() {
    return 3;
  }
}
