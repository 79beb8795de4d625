package stackside.derive.question;

import java.util.List;
import stackside.derive.difference.RoomAtAsset;

/**
 * One question about a place, with its only right answer, and answers that are right in other
 * places but wrong here.
 *
 * @param wrong no two of them mean the same, and none means the same as the right answer
 */
public record Question(RoomAtAsset place, Subject subject, Reply right, List<Elsewhere> wrong) {
  public Question {
    wrong = List.copyOf(wrong);
    if (wrong.isEmpty()) {
      throw new IllegalArgumentException("nothing to choose from: " + subject);
    }
  }

  /** What is right in another place. */
  public record Elsewhere(RoomAtAsset place, Reply reply) {}
}
